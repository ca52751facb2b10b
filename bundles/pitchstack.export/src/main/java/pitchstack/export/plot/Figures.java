// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.plot;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import pitchstack.core.units.TrueMinus;

/** Numbers for people, with the digits that say something. */
public final class Figures {
    private static final int PERCENT = 100;
    /** Rounding of marks along an axis: finer is noise of the arithmetic. */
    private static final MathContext TICK = new MathContext(9, RoundingMode.HALF_EVEN);

    private Figures() {
    }

    /** A number in a few significant digits, written out in full: 0.062, 5.0, 120. */
    public static String of(double value, int digits) {
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits, RoundingMode.HALF_EVEN));
        int beforePoint = rounded.precision() - rounded.scale();
        return TrueMinus.in(rounded.setScale(Math.max(0, digits - beforePoint), RoundingMode.UNNECESSARY)
                .toPlainString());
    }

    /** A part as whole percents, or as less than one where it is: 56 %, 0.3 %. */
    public static String percent(double part) {
        double percent = PERCENT * part;
        boolean small = percent != 0 && Math.abs(percent) < 1;
        return (small ? of(percent, 1) : TrueMinus.in(Long.toString(Math.round(percent)))) + " %";
    }

    /** A number with as many digits as it has: 15, 20.5. */
    public static String plain(double value) {
        BigDecimal rounded = new BigDecimal(value).round(TICK).stripTrailingZeros();
        return TrueMinus.in(rounded.signum() == 0 ? "0" : rounded.toPlainString());
    }
}
