// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;

/** Round positions for the marks of a scale, in the unit that people read on an axis. */
final class Ticks {
    /** Enough to read off by, and few enough that the numbers never touch. */
    private static final int MOST = 12;
    private static final MathContext DIGITS = new MathContext(30);

    /**
     * One mark.
     *
     * @param at its position, in counts, not always whole
     * @param label its number
     */
    record Tick(BigDecimal at, String label) { }

    private Ticks() {
    }

    /** The unit of the numbers: the symbol of a length, or °. */
    static String unit(Scale scale) {
        if (scale.turn() != 0) {
            return "°";
        }
        String size = scale.smallestSize();
        return size.substring(size.indexOf(' ') + 1);
    }

    /**
     * The marks from one position to another, at multiples of 1, 2 or 5 times a power of ten.
     *
     * @param low the lowest position, in counts
     * @param high the highest, at least {@code low}
     */
    static List<Tick> between(Scale scale, long low, long high) {
        // What a bare number means on this scale.
        BigDecimal unit = BigDecimal.valueOf(scale.parse("1"));
        BigDecimal first = BigDecimal.valueOf(low).divide(unit, DIGITS);
        BigDecimal last = BigDecimal.valueOf(high).divide(unit, DIGITS);
        BigDecimal step = step(last.subtract(first));
        List<Tick> ticks = new ArrayList<>();
        BigDecimal at = first.divide(step, 0, RoundingMode.CEILING).multiply(step);
        for (; at.compareTo(last) <= 0; at = at.add(step)) {
            ticks.add(new Tick(at.multiply(unit), label(at, step)));
        }
        return ticks;
    }

    private static BigDecimal step(BigDecimal length) {
        if (length.signum() == 0) {
            return BigDecimal.ONE;
        }
        BigDecimal power = BigDecimal.ONE.scaleByPowerOfTen(length.precision() - length.scale() - 3);
        while (true) {
            for (int digit : new int[] {1, 2, 5}) {
                BigDecimal step = power.multiply(BigDecimal.valueOf(digit));
                if (length.compareTo(step.multiply(BigDecimal.valueOf(MOST))) <= 0) {
                    return step;
                }
            }
            power = power.scaleByPowerOfTen(1);
        }
    }

    private static String label(BigDecimal at, BigDecimal step) {
        BigDecimal shown = at.setScale(Math.max(0, step.stripTrailingZeros().scale()), RoundingMode.UNNECESSARY);
        return TrueMinus.in(shown.toPlainString());
    }
}
