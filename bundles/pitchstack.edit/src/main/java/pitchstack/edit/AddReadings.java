// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import pitchstack.model.MeasurementRun;
import pitchstack.model.Reading;

/**
 * Puts readings into a run, one behind the other.
 *
 * @param run the run
 * @param position where in its list the first shall stand, from 0 to the list's size
 * @param readings new readings, in no document yet
 * @param label what the person did
 */
public record AddReadings(MeasurementRun run, int position, List<Reading> readings, String label) implements Edit {
    /** Copies the list. */
    public AddReadings {
        readings = List.copyOf(readings);
    }

    @Override
    public void apply() {
        run.getReadings().addAll(position, readings);
    }
}
