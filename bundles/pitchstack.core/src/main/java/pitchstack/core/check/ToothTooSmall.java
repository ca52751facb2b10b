// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;

/**
 * A printed tooth needs two lines across its tip and one across the gap at its root. Widths for the ISO 53 type A
 * profile at 20°, in modules m = pitch/π: tip land π/2 − 2·tan 20°, root gap π/2 − 2·1.25·tan 20°. Linear axes only:
 * the pitch of a ring is an angle.
 */
public final class ToothTooSmall implements Check {
    private static final double FLANK_TANGENT = Math.tan(Math.toRadians(20));
    /** Addendum 1 m on both flanks. */
    private static final double TIP_LAND_MODULES = Math.PI / 2 - 2 * FLANK_TANGENT;
    /** Dedendum 1.25 m on both flanks. */
    private static final double ROOT_GAP_MODULES = Math.PI / 2 - 2 * 1.25 * FLANK_TANGENT;
    private static final double METRES_PER_COUNT = 1e-15;

    /**
     * The smallest pitch whose tip and root gap a printer can still make.
     *
     * @param lineWidthM width of a printed line in metres, above 0
     * @return metres
     */
    public static double smallestPitchM(double lineWidthM) {
        return Math.PI * Math.max(2 * lineWidthM / TIP_LAND_MODULES, lineWidthM / ROOT_GAP_MODULES);
    }

    @Override
    public List<Finding> apply(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        for (int j = 0; j < subject.axis().stages().size(); j++) {
            StageSpec stage = subject.axis().stages().get(j);
            if (stage.source() == Source.PRINTED && stage.nominalPitch() > 0 && subject.axis().scale().turn() == 0
                    && subject.lineWidthM() > 0) {
                look(findings, j, stage, "tip", TIP_LAND_MODULES, 2 * subject.lineWidthM());
                look(findings, j, stage, "root gap", ROOT_GAP_MODULES, subject.lineWidthM());
            }
        }
        return findings;
    }

    private static void look(List<Finding> findings, int j, StageSpec stage, String part, double modules,
            double neededM) {
        double perPitch = modules / Math.PI;
        double widthM = stage.nominalPitch() * METRES_PER_COUNT * perPitch;
        if (widthM < neededM) {
            findings.add(new Finding("tooth-too-small", Severity.WARNING, Place.stage(j), mm(widthM), mm(neededM),
                    "The " + part + " of a tooth of stage " + stage.title(j) + " is " + mm(widthM)
                            + " wide, less than the " + mm(neededM) + " that the printed line needs; use a pitch of "
                            + mm(neededM / perPitch) + " or more, or a finer nozzle."));
        }
    }

    private static String mm(double metres) {
        return String.format(Locale.ROOT, "%.3f mm", metres * 1000);
    }
}
