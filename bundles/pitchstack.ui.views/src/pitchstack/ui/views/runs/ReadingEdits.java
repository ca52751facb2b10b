// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.accuracy.fit.MeasuringPlan;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Setting;
import pitchstack.edit.AddReadings;
import pitchstack.edit.FillReadings;
import pitchstack.edit.RemoveReadings;
import pitchstack.model.Approach;
import pitchstack.model.MeasurementRun;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Reading;

/** What a person does to the readings of a run, each as one change that can be taken back. */
final class ReadingEdits {
    private final Runs runs;

    ReadingEdits(Runs runs) {
        this.runs = runs;
    }

    /** A reading of the setting that the last one has, or of where the stages stand, at the end of the run. */
    Reading add() {
        MeasurementRun run = runs.begun();
        List<Reading> all = run.getReadings();
        Reading last = all.isEmpty() ? null : all.get(all.size() - 1);
        boolean fits = last != null && last.getSetting().size() == runs.axis().getStages().size();
        Reading reading = fits ? reading(last.getSetting(), last.getApproach())
                : reading(runs.session().analysis().current().toList(), Approach.UNKNOWN);
        put(run, List.of(reading), "Add reading");
        return reading;
    }

    /** Puts settings to be read at the end of the run. */
    void plan(List<MeasuringPlan.Line> lines) {
        List<Reading> planned = lines.stream().map(line -> reading(line.setting().toList(), approach(line.direction())))
                .toList();
        put(runs.begun(), planned, "Plan " + planned.size() + (planned.size() == 1 ? " reading" : " readings"));
    }

    /** Puts settings to be read from either side at the end of the run. */
    void plan(List<Setting> settings, boolean fromBothSides) {
        List<MeasuringPlan.Line> lines = new ArrayList<>();
        for (Setting setting : settings) {
            lines.add(new MeasuringPlan.Line(1, setting, Direction.FORWARD));
            if (fromBothSides) {
                lines.add(new MeasuringPlan.Line(1, setting, Direction.BACK));
            }
        }
        plan(lines);
    }

    /** Adds readings that were read elsewhere. */
    void add(List<Reading> readings, String how) {
        put(runs.begun(), readings, how + (readings.size() == 1 ? " 1 reading" : " " + readings.size() + " readings"));
    }

    void delete(List<Reading> some) {
        if (!some.isEmpty()) {
            runs.session().run(new RemoveReadings(some));
        }
    }

    /** Puts a column of values into the readings from one on that are there; tells how many values were left over. */
    int fill(Reading first, List<String> values) {
        List<Reading> all = runs.begun().getReadings();
        int from = Math.max(0, all.indexOf(first));
        int count = Math.min(values.size(), all.size() - from);
        if (count > 0) {
            runs.session().run(new FillReadings(all.subList(from, from + count), values.subList(0, count)));
        }
        return values.size() - count;
    }

    private void put(MeasurementRun run, List<Reading> readings, String label) {
        runs.session().run(new AddReadings(run, run.getReadings().size(), readings, label));
    }

    private static Reading reading(List<Integer> setting, Approach approach) {
        Reading reading = PitchstackFactory.eINSTANCE.createReading();
        reading.getSetting().addAll(setting);
        reading.setApproach(approach);
        return reading;
    }

    private static Approach approach(Direction direction) {
        return switch (direction) {
            case FORWARD -> Approach.UP;
            case BACK -> Approach.DOWN;
            case UNKNOWN -> Approach.UNKNOWN;
        };
    }
}
