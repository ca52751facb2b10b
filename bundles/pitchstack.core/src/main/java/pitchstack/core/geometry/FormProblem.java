// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry;

import java.util.Locale;
import java.util.Optional;

/** Why a tooth of some form cannot be made at all. */
public final class FormProblem {
    private static final double STEEPEST_DEG = 45;

    private FormProblem() {
    }

    /** One sentence with the number and what is allowed; empty where the tooth can be made. */
    public static Optional<String> of(ToothForm form) {
        if (!(form.pitchMm() > 0)) {
            return Optional.of("The pitch is " + mm(form.pitchMm()) + "; a tooth needs one above 0.");
        }
        if (!(form.flankAngleDeg() > 0 && form.flankAngleDeg() < STEEPEST_DEG)) {
            return Optional.of("The flank angle is " + number(form.flankAngleDeg()) + "°; between 0° and 45° is allowed.");
        }
        if (!(form.addendumMm() > 0 && form.clearanceMm() >= 0)) {
            return Optional.of("A depth of " + mm(form.depthMm()) + " with a root relief of " + mm(form.clearanceMm())
                    + " leaves no tooth; the relief must be at least 0 and less than the depth.");
        }
        return width(form).or(() -> roundings(form)).or(() -> slot(form));
    }

    private static Optional<String> width(ToothForm form) {
        double most = form.pitchMm() / 4 / form.flankTangent();
        if (form.tipLandMm() <= 0 || form.rootGapMm() <= 0) {
            return Optional.of("Flanks at " + number(form.flankAngleDeg()) + "° meet before the depth is reached: from the"
                    + " middle to tip or root less than " + mm(most) + " is allowed, and here it is "
                    + mm(form.dedendumMm()) + "; take less depth or a steeper flank.");
        }
        return Optional.empty();
    }

    private static Optional<String> roundings(ToothForm form) {
        if (form.filletMm() < 0 || form.tipReliefMm() < 0 || form.wellMm() < 0 || form.slotMm() < 0) {
            return Optional.of("Root fillet, tip relief, well and slot must not be below 0.");
        }
        double fillet = form.fittingFilletMm();
        if (form.wellMm() == 0 && form.filletMm() > fillet) {
            return Optional.of("A root fillet of " + mm(form.filletMm()) + " does not fit into the gap; up to "
                    + mm(fillet) + " does.");
        }
        double angle = Math.toRadians(form.flankAngleDeg());
        double relief = Math.min(form.tipLandMm() / 2 * Math.cos(angle), form.addendumMm());
        if (form.tipReliefMm() > relief) {
            return Optional.of("A tip relief of " + mm(form.tipReliefMm()) + " is more than the tip holds; up to "
                    + mm(relief) + " is possible.");
        }
        return Optional.empty();
    }

    private static Optional<String> slot(ToothForm form) {
        double land = form.flatTipMm();
        return form.slotMm() == 0 || form.slotMm() < land ? Optional.empty()
                : Optional.of("A slot of " + mm(form.slotMm()) + " is as wide as the tip, which is " + mm(land)
                        + "; make the slot narrower.");
    }

    private static String mm(double length) {
        return number(length) + " mm";
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.3f", value).replaceAll("\\.?0+$", "");
    }
}
