// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pitchstack.core.coverage.WearMark;
import pitchstack.core.stack.AxisSpec;
import pitchstack.model.Axis;

/** Teeth that are supposed to be worn or barred, by axis: beside the document, and gone with its session. */
final class Suppositions {
    private final Map<Axis, List<ToothMark>> byAxis = new HashMap<>();

    /** Those of an axis whose rows are part of it. */
    List<ToothMark> of(Axis axis) {
        return byAxis.getOrDefault(axis, List.of()).stream().filter(mark -> mark.row().eContainer() != null
                && mark.row().eContainer().eContainer() == axis).toList();
    }

    void set(Axis axis, List<ToothMark> marks) {
        byAxis.put(axis, List.copyOf(marks));
    }

    /** An axis as it would be. */
    AxisSpec on(AxisSpec spec, Axis axis) {
        return WearMark.onAll(spec, of(axis).stream().map(ToothMark::inNumbers).toList());
    }
}
