// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import java.util.stream.Stream;
import org.eclipse.emf.common.util.EList;
import pitchstack.model.Axis;
import pitchstack.model.MeasurementRun;
import pitchstack.model.Reading;

/** A reading holds one index a stage, in the order of the stages; here they follow when stages come and go. */
final class MeasuredSettings {
    private MeasuredSettings() {
    }

    /** A stage that has joined an axis stood at its zero, whatever was measured before. */
    static void makeRoom(Axis axis, int position) {
        all(axis).filter(setting -> setting.size() >= position).forEach(setting -> setting.add(position, 0));
    }

    /**
     * Leaves a stage out that leaves its axis, of runs in which it never moved. Other runs are of the stack as it was: their
     * readings keep an index more than there are stages, so that nobody takes them for what they are not.
     */
    static void close(Axis axis, int position) {
        int stages = axis.getStages().size();
        for (MeasurementRun run : axis.getRuns()) {
            List<EList<Integer>> settings = run.getReadings().stream().map(Reading::getSetting)
                    .filter(setting -> setting.size() == stages).toList();
            if (settings.size() == run.getReadings().size()
                    && settings.stream().map(setting -> setting.get(position)).distinct().count() == 1) {
                settings.forEach(setting -> setting.remove(position));
            }
        }
    }

    /** Puts the indices into the order of the stages again after one has gone to another place. */
    static void move(Axis axis, int from, int to) {
        all(axis).filter(setting -> setting.size() == axis.getStages().size()).forEach(setting -> setting.move(to, from));
    }

    private static Stream<EList<Integer>> all(Axis axis) {
        return axis.getRuns().stream().flatMap(run -> run.getReadings().stream()).map(Reading::getSetting);
    }
}
