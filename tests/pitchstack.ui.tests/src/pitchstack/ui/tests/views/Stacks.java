// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import pitchstack.edit.NewStack;
import pitchstack.model.Axis;
import pitchstack.model.AxisKind;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.Target;

/** Documents to test with. */
public final class Stacks {
    private Stacks() {
    }

    /**
     * A 5 mm rack and a 4.9 mm stage, both at index 0, for steps of 0.1 mm, with a tolerance of 0.05 mm; two saved
     * targets.
     */
    public static Positioner millimetres() {
        Positioner positioner = NewStack.positioner();
        Axis axis = positioner.getAxes().get(0);
        axis.getTargets().add(target("First hole", "10.1 mm", null));
        axis.getTargets().add(target("Second hole", "24.9 mm", "0.02 mm"));
        return positioner;
    }

    /** The same with a second axis like the first; they are called X and Y. */
    static Positioner plate() {
        Positioner positioner = millimetres();
        positioner.getAxes().get(0).setName("X");
        Axis second = NewStack.positioner().getAxes().get(0);
        second.setName("Y");
        positioner.getAxes().add(second);
        return positioner;
    }

    /** Two toothed joints in 1/32 and 1/45 of a turn, for steps of 1/1440 of a turn, a quarter of a degree. */
    static Positioner table() {
        Positioner positioner = NewStack.positioner();
        Axis axis = positioner.getAxes().get(0);
        axis.setKind(AxisKind.ROTARY);
        axis.setTolerance("1 arcsec");
        axis.setWantedStep(null);
        String[] pitches = {"32 per turn", "45 per turn"};
        for (int j = 0; j < pitches.length; j++) {
            axis.getStages().get(j).setPitch(pitches[j]);
        }
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
