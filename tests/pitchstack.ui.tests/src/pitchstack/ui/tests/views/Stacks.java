// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import pitchstack.edit.NewStack;
import pitchstack.model.Axis;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.Target;

/** Documents to test with. */
final class Stacks {
    private Stacks() {
    }

    /**
     * A 5 mm rack and a 4.9 mm stage, both at index 0, for steps of 0.1 mm, with a tolerance of 0.05 mm; two saved
     * targets.
     */
    static Positioner millimetres() {
        Positioner positioner = NewStack.positioner();
        Axis axis = positioner.getAxes().get(0);
        axis.getTargets().add(target("First hole", "10.1 mm", null));
        axis.getTargets().add(target("Second hole", "24.9 mm", "0.02 mm"));
        return positioner;
    }

    private static Target target(String name, String position, String tolerance) {
        Target target = PitchstackFactory.eINSTANCE.createTarget();
        target.setName(name);
        target.setPosition(position);
        target.setTolerance(tolerance);
        return target;
    }
}
