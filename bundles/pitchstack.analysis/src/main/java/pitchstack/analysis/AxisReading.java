// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import java.util.List;
import pitchstack.core.check.Finding;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;

/**
 * An axis of the model read into numbers.
 *
 * @param spec the axis in numbers; where a text could not be read, its number is 0
 * @param current where the stages stand
 * @param last which way each stage moved last
 * @param lineWidthM width of a printed line in metres
 * @param unreadable one finding for each text that could not be read
 * @param remarks findings about what is in the file but not in the numbers
 */
public record AxisReading(AxisSpec spec, Setting current, Directions last, double lineWidthM, List<Finding> unreadable,
        List<Finding> remarks) {
    /** Copies the lists. */
    public AxisReading {
        unreadable = List.copyOf(unreadable);
        remarks = List.copyOf(remarks);
    }
}
