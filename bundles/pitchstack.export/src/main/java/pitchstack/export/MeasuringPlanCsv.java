// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.accuracy.fit.MeasuringPlan;
import pitchstack.core.stack.AxisSpec;

/**
 * A measuring plan as a table to be filled in and read back by {@link ReadingsCsv}: the columns position and temperature are
 * empty.
 */
public final class MeasuringPlanCsv {
    private MeasuringPlanCsv() {
    }

    /**
     * The table: run, the index of every stage, direction, where the carriage is expected, and two empty columns.
     *
     * @param axis the axis
     * @param plan the readings to take, in order
     */
    public static String of(AxisSpec axis, List<MeasuringPlan.Line> plan) {
        String unit = axis.scale().turn() == 0 ? " (mm)" : " (deg)";
        List<List<String>> rows = new ArrayList<>();
        List<String> header = new ArrayList<>(List.of("run"));
        header.addAll(ReadingsCsv.header(axis));
        header.addAll(List.of("direction", "expected" + unit, "position" + unit, "temperature (°C)"));
        rows.add(header);
        for (MeasuringPlan.Line line : plan) {
            List<String> row = new ArrayList<>(List.of(Integer.toString(line.run())));
            line.setting().toList().forEach(index -> row.add(index.toString()));
            row.addAll(List.of(ReadingsCsv.word(line.direction()), axis.scale().decimal(axis.position(line.setting())), "", ""));
            rows.add(row);
        }
        return Cells.commas(rows);
    }
}
