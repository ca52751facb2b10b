// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.Map;
import pitchstack.core.geometry.ToothForm;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;

/**
 * What the checks look at.
 *
 * @param axis the axis
 * @param current where its stages stand
 * @param lineWidthM width of a printed line in metres, above 0
 * @param forms the teeth of printed rows by stage index, as far as they are known
 */
public record Subject(AxisSpec axis, Setting current, double lineWidthM, Map<Integer, ToothForm> forms) {
    /** Copies the map. */
    public Subject {
        forms = Map.copyOf(forms);
    }
}
