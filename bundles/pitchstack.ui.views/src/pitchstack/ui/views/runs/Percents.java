// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import pitchstack.core.units.TrueMinus;
import pitchstack.export.plot.Figures;

/** Small parts of a length as people say them: {@code 0.080 % long, ±0.020 %}. */
final class Percents {
    private static final int PERCENT = 100;
    /** Of what is uncertain two digits say all there is. */
    private static final int DIGITS = 2;
    /** A millionth, the unit of corrections in a file. */
    private static final int MOST_DECIMALS = 4;
    private static final double LEAST = 1e-4;

    private Percents() {
    }

    /** Half the width of an interval, in two digits; one of less than a millionth is called a millionth. */
    static String within(double part) {
        return Figures.of(Math.max(LEAST, PERCENT * part), DIGITS) + " %";
    }

    /** The size of a number with as many decimals as its interval has. */
    static String size(double part, double within) {
        return decimal(Math.abs(part), within).toPlainString() + " %";
    }

    /** A number with its sign, with as many decimals as its interval has. */
    static String signed(double part, double within) {
        BigDecimal rounded = decimal(part, within);
        return (rounded.signum() > 0 ? "+" : "") + TrueMinus.in(rounded.toPlainString()) + " %";
    }

    private static BigDecimal decimal(double part, double within) {
        int decimals = MOST_DECIMALS;
        if (PERCENT * within > LEAST) {
            BigDecimal digits = new BigDecimal(PERCENT * within).round(new MathContext(DIGITS, RoundingMode.HALF_EVEN));
            decimals = Math.min(MOST_DECIMALS, Math.max(0, digits.scale()));
        }
        return new BigDecimal(PERCENT * part).setScale(decimals, RoundingMode.HALF_EVEN);
    }
}
