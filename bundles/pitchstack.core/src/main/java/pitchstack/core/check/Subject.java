// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;
import pitchstack.core.plan.Stop;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;

/**
 * What the checks look at.
 *
 * @param axis the axis
 * @param current where its stages stand
 * @param lineWidthM width of a printed line in metres, above 0
 * @param targets the saved targets of the axis, in the order of the file
 */
public record Subject(AxisSpec axis, Setting current, double lineWidthM, List<Stop> targets) {
    /** Copies the list. */
    public Subject {
        targets = List.copyOf(targets);
    }

    /** An axis without saved targets. */
    public Subject(AxisSpec axis, Setting current, double lineWidthM) {
        this(axis, current, lineWidthM, List.of());
    }
}
