// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.List;
import pitchstack.core.accuracy.total.AxisAccuracy;
import pitchstack.core.stack.AxisSpec;

/**
 * How well an axis of the model is made, measured and placed, in numbers.
 *
 * @param spec the axis
 * @param accuracy how well it is known; metres, on a rotary axis radians
 * @param assumptions one plain sentence for everything that the file does not say, and for what the model leaves out
 * @param unreadable one sentence for every entry that could not be read and was taken as not said
 */
public record AccuracyReading(AxisSpec spec, AxisAccuracy accuracy, List<String> assumptions, List<String> unreadable) {
    /** Copies the lists. */
    public AccuracyReading {
        assumptions = List.copyOf(assumptions);
        unreadable = List.copyOf(unreadable);
    }
}
