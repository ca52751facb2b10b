// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import pitchstack.core.units.Scale;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.PitchstackPackage.Literals;
import pitchstack.model.Stage;
import pitchstack.model.ToothForm;
import pitchstack.model.ToothPattern;
import pitchstack.model.ToothProfile;

/** The facts of the teeth of a stage, also of one whose tooth form nobody has told yet. */
final class ToothFormProperties {
    private static final String FORM = "Tooth form";
    private static final double LEAST_FLANK_DEG = 5;
    private static final double MOST_FLANK_DEG = 60;
    private static final double MOST_HERRINGBONE_DEG = 60;

    private ToothFormProperties() {
    }

    static List<Property> of(Stage stage) {
        ToothForm form = stage.getToothForm() != null ? stage.getToothForm() : PitchstackFactory.eINSTANCE.createToothForm();
        Entries entries = new Entries(form, "“" + stage.getName() + "”",
                (feature, value, label) -> new ShapeTeeth(stage, feature, value, label));
        Scale scale = Lengths.scale(stage);
        return List.of(
                entries.choice(Literals.TOOTH_FORM__PROFILE, "profile", "A standard basic rack, whose form follows from the "
                        + "pitch, or one of your own.", FORM, ToothProfile.VALUES),
                entries.decimal(Literals.TOOTH_FORM__FLANK_ANGLE_DEG, "flank angle (°)", "Between a flank and the height of the "
                        + "tooth; bought racks have 20 or 14.5.", FORM, LEAST_FLANK_DEG, MOST_FLANK_DEG),
                entries.size(Literals.TOOTH_FORM__DEPTH, "depth", "From tip to root; empty for what the pitch usually has.", FORM,
                        scale, 0),
                entries.size(Literals.TOOTH_FORM__TIP_RELIEF, "tip relief", "By how much the tips are lower, so that they never "
                        + "touch a root.", FORM, scale, -1),
                entries.size(Literals.TOOTH_FORM__ROOT_RELIEF, "root relief", "By how much the roots are deeper.", FORM, scale,
                        -1),
                entries.size(Literals.TOOTH_FORM__ROOT_FILLET, "root fillet", "Radius between flank and root.", FORM, scale, -1),
                entries.size(Literals.TOOTH_FORM__SLOT, "slot", "Width of a slot down the middle of each tooth, which makes it "
                        + "softer; empty for none.", FORM, scale, -1),
                entries.size(Literals.TOOTH_FORM__WELL, "well", "How much deeper the gaps reach than the teeth do, which makes "
                        + "teeth longer and softer; empty for none.", FORM, scale, -1),
                entries.choice(Literals.TOOTH_FORM__PATTERN, "pattern", "Straight across, or herringbone, which also keeps the "
                        + "bodies in line.", FORM, ToothPattern.VALUES),
                entries.decimal(Literals.TOOTH_FORM__HERRINGBONE_ANGLE_DEG, "herringbone angle (°)", "How far each half of a "
                        + "herringbone tooth is turned; 0 while teeth are straight.", FORM, 0, MOST_HERRINGBONE_DEG));
    }
}
