// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.accuracy;

import java.util.List;
import org.eclipse.swt.widgets.Composite;
import pitchstack.analysis.accuracy.JointTeeth;
import pitchstack.core.accuracy.teeth.Joint;
import pitchstack.core.accuracy.teeth.ToothForm;
import pitchstack.core.accuracy.teeth.ToothVariant;
import pitchstack.export.plot.PlotUnit;
import pitchstack.ui.views.accuracy.SliderField.Range;

/** The numbers of a joint that can be tried out, each with a slider and a field. */
final class TeethForm {
    private static final int MOST_TEETH = 200;
    private static final double MOST_SCATTER_UM = 200;
    /** A slot leaves a quarter of the tooth at the pitch line, an eighth for each leaf. */
    private static final double MOST_SLOT_PART = 0.75;
    private static final double MOST_FRICTION = 1.5;
    private static final int STEPS = 100;
    private static final double UM = 1e-6;

    private final SliderField preload;
    private final SliderField teeth;
    private final SliderField scatter;
    private final SliderField slot;
    private final SliderField well;
    private final SliderField friction;
    private final List<SliderField> all;
    private JointTeeth joint;
    private PlotUnit small = PlotUnit.UM;
    private PlotUnit large = PlotUnit.MM;

    /** @param changed called after each change that a person makes */
    TeethForm(Composite parent, Runnable changed) {
        preload = new SliderField(parent, "Preload", "The force that pushes the rows together", changed);
        teeth = new SliderField(parent, "Engaged teeth", "How many teeth of the two rows are in each other", changed);
        scatter = new SliderField(parent, "Scatter", "Standard deviation of a flank from where it belongs, both rows"
                + " together",
                changed);
        slot = new SliderField(parent, "Slot", "Width of a slot down the middle of each printed tooth, to soften it;"
                + " each half then bears for its own flank. 0 for none", changed);
        well = new SliderField(parent, "Deeper gaps", "How much deeper than needed the gaps of printed rows are cut,"
                + " which makes the teeth longer and softer. 0 for none", changed);
        friction = new SliderField(parent, "Friction", "Coefficient of friction of the flanks: dry printed PLA 0.6 to"
                + " 0.8, oiled metal about 0.15", changed);
        all = List.of(preload, teeth, scatter, slot, well, friction);
    }

    /**
     * Fills in what the file says.
     *
     * @param engaged teeth, where the stages stand
     * @param mostN the largest preload of the slider
     * @param preloadN the preload to begin with
     */
    void show(JointTeeth shown, Sizes sizes, int engaged, double mostN, double preloadN) {
        joint = shown;
        small = sizes.errors();
        large = sizes.positions();
        ToothForm form = joint.pair().form();
        preload.show(new Range(mostN / STEPS, mostN, mostN / STEPS, mostN >= STEPS ? 0 : 1), preloadN, "N");
        teeth.show(new Range(1, Math.max(MOST_TEETH, engaged), 1, 0), engaged, "");
        double scatterMost = small.of(MOST_SCATTER_UM * UM);
        scatter.show(new Range(scatterMost / MOST_SCATTER_UM, scatterMost, scatterMost / MOST_SCATTER_UM,
                small == PlotUnit.UM ? 1 : 2), small.of(joint.scatterM()), small.symbol());
        length(slot, MOST_SLOT_PART * form.thicknessM(form.dedendumM()), joint.variant().slotM());
        length(well, form.depthM(), joint.variant().wellM());
        friction.show(new Range(0, MOST_FRICTION, 1e-2, 2), joint.friction(), "");
    }

    private void length(SliderField field, double mostM, double valueM) {
        // Down to what the field can show, so that the largest number is allowed when it is typed.
        int decimals = large == PlotUnit.MM ? 2 : 4;
        double most = Math.floor(large.of(mostM) * Math.pow(10, decimals)) / Math.pow(10, decimals);
        field.show(new Range(0, most, most / STEPS, decimals), large.of(valueM), large.symbol());
    }

    /** What is wrong with what is typed, in a sentence; empty where nothing is. */
    String problem() {
        return all.stream().map(SliderField::problem).filter(p -> !p.isEmpty()).findFirst().orElse("");
    }

    /** The joint as it is tried out. */
    Joint joint() {
        int count = (int) teeth.value();
        double slotM = slot.value() / large.of(1);
        return new Joint(joint.pair(), new ToothVariant(slotM, slotM > 0, well.value() / large.of(1)), count,
                joint.independent(count), scatter.value() / small.of(1), friction.value());
    }

    /** The preload as it is tried out, in newtons. */
    double preloadN() {
        return preload.value();
    }

    void setEnabled(boolean enabled) {
        all.forEach(field -> field.setEnabled(enabled));
    }

    void setFocus() {
        preload.setFocus();
    }
}
