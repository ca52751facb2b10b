// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.Optional;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.accuracy.material.Material;
import pitchstack.core.accuracy.teeth.ToothForm;
import pitchstack.core.stack.StageSpec;
import pitchstack.model.Positioner;
import pitchstack.model.Stage;

/** Reads the teeth of one stage, to try out other ones. */
public final class JointReader {
    private JointReader() {
    }

    /**
     * Reads a stage.
     *
     * @param positioner the whole device
     * @param analysis of one of its axes, without errors
     * @param place of the stage, counted from the lowest, 0
     * @return nothing on a rotary axis, for which a file has no radius
     */
    public static Optional<JointTeeth> read(Positioner positioner, AxisAnalysis analysis, int place) {
        if (analysis.spec().scale().turn() > 0) {
            return Optional.empty();
        }
        Notes notes = new Notes();
        Stage stage = analysis.axis().getStages().get(place);
        StageSpec spec = analysis.spec().stages().get(place);
        String title = spec.title(place);
        double pitchM = Si.of(spec.pitch(), analysis.spec().scale());
        RowReader below = new RowReader(new RowFacts(positioner, stage, stage.getBaseRow(), title + ", base row",
                pitchM, false, notes));
        RowReader above = new RowReader(new RowFacts(positioner, stage, stage.getRiderRow(), title + ", rider row",
                pitchM, false, notes));
        Material base = below.material();
        Material rider = above.material();
        HoldReader hold = new HoldReader(stage, title, pitchM, base, rider, notes);
        ToothForm form = hold.form();
        notes.assume(Materials.stiffness(base));
        notes.assume(Materials.stiffness(rider));
        return Optional.of(new JointTeeth(title, hold.pair(form), ToothForms.variant(stage, title, form, notes),
                below.read(),
                above.read(), notes.number(title + ": the preload", stage.getPreloadN()), hold.friction(), base, rider,
                notes.assumptions()));
    }
}
