// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.Locale;
import java.util.OptionalDouble;
import pitchstack.core.accuracy.teeth.ToothForm;
import pitchstack.core.accuracy.teeth.ToothVariant;
import pitchstack.model.Stage;
import pitchstack.model.ToothProfile;

/** The tooth of a stage as a trapezoid for stiffness and strength. */
public final class ToothForms {
    private static final double ISO_ANGLE_DEG = 20;
    private static final double ADDENDUM_MODULES = 1;
    /** Dedendum of types A, B and C of ISO 53 in modules; type D is cut deeper. */
    private static final double USUAL_DEDENDUM_MODULES = 1.25;
    private static final double DEEP_DEDENDUM_MODULES = 1.4;

    private ToothForms() {
    }

    /**
     * The tooth.
     *
     * @param title of the stage, for sentences
     * @param faceWidthM of the row, above 0
     */
    static ToothForm of(Stage stage, String title, double pitchM, double faceWidthM, Notes notes) {
        double module = pitchM / Math.PI;
        pitchstack.model.ToothForm form = stage.getToothForm();
        if (form == null || form.getProfile() != ToothProfile.OWN) {
            boolean deep = form != null && form.getProfile() == ToothProfile.ISO53_D;
            if (form == null) {
                notes.assume(title + ": no tooth form is given; that of ISO 53, type A, is taken.");
            }
            return new ToothForm(pitchM, Math.toRadians(ISO_ANGLE_DEG), ADDENDUM_MODULES * module,
                    (deep ? DEEP_DEDENDUM_MODULES : USUAL_DEDENDUM_MODULES) * module, faceWidthM);
        }
        OptionalDouble depth = notes.quantity(title + ": the tooth depth", form.getDepth(), Si::lengthM);
        OptionalDouble relief = notes.quantity(title + ": the root relief", form.getRootRelief(), Si::lengthM);
        double clearance = relief.orElse((USUAL_DEDENDUM_MODULES - ADDENDUM_MODULES) * module);
        double whole = depth.orElse((USUAL_DEDENDUM_MODULES + ADDENDUM_MODULES) * module);
        double addendum = (whole - clearance) / 2;
        double angle = Math.toRadians(form.getFlankAngleDeg());
        if (!(angle > 0 && angle < Math.PI / 2 && addendum > 0
                && pitchM / 2 > 2 * Math.tan(angle) * (whole - addendum))) {
            notes.refuse(String.format(Locale.ROOT, "%s: its tooth of %.2f mm depth with flanks of %.1f° has no tip or no root;"
                    + " that of ISO 53, type A, is taken.", title, whole * 1e3, form.getFlankAngleDeg()));
            return ToothForm.basicRack(module, faceWidthM);
        }
        return new ToothForm(pitchM, angle, addendum, whole - addendum, faceWidthM);
    }

    /** How the tooth is softened. */
    static ToothVariant variant(Stage stage, String title, ToothForm form, Notes notes) {
        pitchstack.model.ToothForm drawn = stage.getToothForm();
        if (drawn == null) {
            return ToothVariant.SOLID;
        }
        double slot = notes.quantity(title + ": the slot", drawn.getSlot(), Si::lengthM).orElse(0);
        double well = notes.quantity(title + ": the well", drawn.getWell(), Si::lengthM).orElse(0);
        if (slot >= form.thicknessM(form.dedendumM())) {
            notes.refuse(String.format(Locale.ROOT, "%s: a slot of %.2f mm leaves nothing of a tooth of %.2f mm at the pitch"
                    + " line; it counts as solid.", title, slot * 1e3, form.thicknessM(form.dedendumM()) * 1e3));
            return new ToothVariant(0, false, well);
        }
        return new ToothVariant(slot, slot > 0, well);
    }
}
