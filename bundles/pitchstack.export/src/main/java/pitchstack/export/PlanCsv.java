// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import pitchstack.core.plan.Leg;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Stop;
import pitchstack.core.plan.Wording;
import pitchstack.core.stack.AxisSpec;

/**
 * A planned list of stops as a table: one row a stop in the order of the moves, with the index of every stage. Commas, a
 * decimal point; millimetres on a linear axis, whatever the unit of the file, degrees on a rotary one. What does not
 * apply to a stop that is left out is empty.
 */
public final class PlanCsv {
    private final AxisSpec axis;
    private final List<Stop> stops;

    private PlanCsv(AxisSpec axis, List<Stop> stops) {
        this.axis = axis;
        this.stops = stops;
    }

    /**
     * The table.
     *
     * @param axis the axis that was planned on
     * @param stops the stops in the given order
     * @param legs every stop once, in the order of the moves
     */
    public static String of(AxisSpec axis, List<Stop> stops, List<Leg> legs) {
        PlanCsv plan = new PlanCsv(axis, stops);
        StringBuilder text = new StringBuilder();
        try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
            csv.printRecord(plan.header());
            for (Leg leg : legs) {
                csv.printRecord(plan.row(leg));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("A string cannot fail to be written to", e);
        }
        return text.toString();
    }

    private List<String> header() {
        String unit = axis.scale().turn() == 0 ? " (mm)" : " (deg)";
        List<String> header = new ArrayList<>(List.of("stop", "name", "target" + unit, "tolerance" + unit,
                "position" + unit, "error" + unit));
        for (int j = 0; j < axis.stages().size(); j++) {
            header.add(stage(j) + " index");
        }
        header.addAll(List.of("effort (s)", "worn", "why not"));
        return header;
    }

    private String stage(int stage) {
        return stage(axis, stage);
    }

    /** The name of a stage, or its number from 1 where it has none. */
    static String stage(AxisSpec axis, int stage) {
        String name = axis.stages().get(stage).name();
        return name.isBlank() ? "Stage " + (stage + 1) : name;
    }

    private List<String> row(Leg leg) {
        Stop stop = stops.get(leg.stop());
        List<String> row = new ArrayList<>(List.of(Integer.toString(leg.stop() + 1), stop.name(),
                axis.scale().decimal(stop.target()), axis.scale().decimal(stop.tolerance())));
        if (leg.move().isPresent()) {
            add(row, leg.move().get());
        } else {
            row.addAll(Collections.nCopies(axis.stages().size() + 4, ""));
        }
        row.add(leg.move().isPresent() ? "" : why(axis, stop, leg));
        return row;
    }

    private void add(List<String> row, PlannedSetting planned) {
        row.add(axis.scale().decimal(planned.position()));
        row.add(axis.scale().decimal(planned.error()));
        for (int index : planned.setting().toArray()) {
            row.add(Integer.toString(index));
        }
        row.add(Wording.seconds(planned.effortMs()));
        row.add(planned.wornStages().stream().map(this::stage).collect(Collectors.joining("; ")));
    }

    /** Why a stop is left out, in one sentence. */
    public static String why(AxisSpec axis, Stop stop, Leg leg) {
        return leg.nearest().map(nearest -> new Wording(axis).reason(stop.target(), stop.tolerance(), nearest))
                .orElse("It could be reached, but only at the price of leaving out another stop.");
    }
}
