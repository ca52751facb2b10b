// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.List;
import pitchstack.core.accuracy.fit.Reading;
import pitchstack.core.accuracy.fit.StageScale;
import pitchstack.core.stack.AxisSpec;

/**
 * A run of measurements in numbers: metres, on a rotary axis radians.
 *
 * @param name of the run
 * @param spec the axis it was taken on
 * @param readings in the order of the run; on a rotary axis unwrapped to where the pitches say
 * @param places of the readings among those of the run in the model, from 0
 * @param expectedM for each reading, where the file as it stands puts the carriage: with its corrections, errors of single
 *     indices and the temperature of the reading
 * @param stages the stages before any correction, for a fit
 * @param instrumentScale relative standard uncertainty that all readings share
 * @param assumptions one sentence for everything that the run does not say
 * @param open how many readings have no value yet, as those of a plan
 * @param unreadable one sentence for every reading that is left out, and for every entry that cannot be read
 */
public record RunReading(String name, AxisSpec spec, List<Reading> readings, List<Integer> places, List<Double> expectedM,
        List<StageScale> stages, double instrumentScale, int open, List<String> assumptions,
        List<String> unreadable) {
    /** Copies the lists. */
    public RunReading {
        readings = List.copyOf(readings);
        places = List.copyOf(places);
        expectedM = List.copyOf(expectedM);
        stages = List.copyOf(stages);
        assumptions = List.copyOf(assumptions);
        unreadable = List.copyOf(unreadable);
    }

    /** How far a reading is from where the file puts the carriage. */
    public double deviationM(int reading) {
        return readings.get(reading).positionM() - expectedM.get(reading);
    }
}
