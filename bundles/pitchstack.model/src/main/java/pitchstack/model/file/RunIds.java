// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pitchstack.model.MeasurementRun;
import pitchstack.model.Positioner;

/** The ids by which stages refer to measurement runs. */
public final class RunIds {
    private static final String STEM = "run-";

    private RunIds() {
    }

    /** The first of run-1, run-2 … that no run of the positioner bears. */
    public static String free(Positioner positioner) {
        return free(taken(runs(positioner)));
    }

    /** Gives an id to every run that has none. */
    static void complete(Positioner positioner) {
        List<MeasurementRun> runs = runs(positioner);
        Set<String> taken = taken(runs);
        for (MeasurementRun run : runs) {
            if (run.getId() == null) {
                run.setId(free(taken));
                taken.add(run.getId());
            }
        }
    }

    /** All runs, axis by axis. */
    static List<MeasurementRun> runs(Positioner positioner) {
        return positioner.getAxes().stream().flatMap(axis -> axis.getRuns().stream()).toList();
    }

    private static Set<String> taken(List<MeasurementRun> runs) {
        Set<String> taken = new HashSet<>();
        runs.forEach(run -> taken.add(run.getId()));
        return taken;
    }

    private static String free(Set<String> taken) {
        int number = 1;
        while (taken.contains(STEM + number)) {
            number++;
        }
        return STEM + number;
    }
}
