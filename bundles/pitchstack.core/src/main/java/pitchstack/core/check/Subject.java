// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;
import java.util.Map;
import pitchstack.core.geometry.ToothForm;
import pitchstack.core.plan.Stop;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;

/**
 * What the checks look at.
 *
 * @param axis the axis
 * @param current where its stages stand
 * @param lineWidthM width of a printed line in metres, above 0
 * @param forms the teeth of printed rows by stage index, as far as they are known
 * @param targets the saved targets of the axis, in the order of the file
 */
public record Subject(AxisSpec axis, Setting current, double lineWidthM, Map<Integer, ToothForm> forms, List<Stop> targets) {
    /** Copies the map and the list. */
    public Subject {
        forms = Map.copyOf(forms);
        targets = List.copyOf(targets);
    }

    /** An axis without saved targets, of whose teeth nothing is known but the pitch. */
    public Subject(AxisSpec axis, Setting current, double lineWidthM) {
        this(axis, current, lineWidthM, Map.of(), List.of());
    }
}
