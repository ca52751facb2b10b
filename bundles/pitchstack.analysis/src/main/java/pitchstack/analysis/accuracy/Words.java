// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.Locale;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.RotaryScale;
import pitchstack.core.units.Scale;

/** Small sizes along an axis, read and written. */
public final class Words {
    private static final RotaryScale ANGLES = new RotaryScale(RotaryScale.ARC_SECONDS * 1_000_000);
    private static final double THOU_M = 25.4e-6;
    private static final double RADIAN_IN_SECONDS = 648_000 / Math.PI;

    private Words() {
    }

    /** A small size in the unit that goes with those of an axis: micrometres, thousandths of an inch or arc seconds. */
    public static String size(double si, Scale scale) {
        if (!(scale instanceof LinearScale linear && linear.unit() == LengthUnit.INCH)) {
            return size(si, scale.turn() > 0);
        }
        double thou = si / THOU_M;
        return String.format(Locale.ROOT, Math.abs(thou) < 1 ? "%.3f thou" : "%.2f thou", thou);
    }

    /** A small size, in micrometres or arc seconds. */
    public static String size(double si, boolean rotary) {
        double size = rotary ? si * RADIAN_IN_SECONDS : si * 1e6;
        return String.format(Locale.ROOT, Math.abs(size) < 10 ? "%.2f" : "%.1f", size) + (rotary ? "″" : " µm");
    }

    /**
     * A size as typed: a length, or on a rotary axis an angle.
     *
     * @throws pitchstack.core.units.QuantityException if it cannot be read
     */
    static double along(String text, boolean rotary) {
        return rotary ? Si.of(ANGLES.parse(text), ANGLES) : Si.lengthM(text);
    }

    /** A small size as a file stores it: to a nanometre, on a rotary axis to a thousandth of an arc second. */
    public static String entry(double si, Scale scale) {
        return scale.turn() == 0 ? String.format(Locale.ROOT, "%.6f mm", si * 1e3)
                : String.format(Locale.ROOT, "%.3f arcsec", si * RADIAN_IN_SECONDS);
    }
}
