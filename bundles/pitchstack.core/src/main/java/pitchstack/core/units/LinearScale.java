// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lengths in femtometres (1 fm = 10⁻¹⁵ m), shown in one unit: ±9 000 m of range, and 0.1 in is exactly
 * 2 540 000 000 000.
 *
 * @param unit the unit shown, and meant where none is typed
 */
public record LinearScale(LengthUnit unit) implements Scale {
    private static final Pattern QUANTITY = Pattern.compile("\\s*([^a-zA-Zµμ\"″]+?)\\s*([a-zA-Zµμ\"″]*)\\s*");
    private static final int MM_EXPONENT = 12;

    @Override
    public long parse(String text) {
        Matcher m = QUANTITY.matcher(text);
        if (!m.matches()) {
            throw new QuantityException("“" + text.strip() + "” is not a length; write it like 37.625 in, 37 5/8 in, "
                    + "742.3 mm or 20 µm.");
        }
        LengthUnit typed = m.group(2).isEmpty() ? unit : LengthUnit.spelled(m.group(2)).orElseThrow(
                () -> new QuantityException("“" + m.group(2) + "” is not a unit of length here; use mm, in or um."));
        return Ratio.parse(m.group(1)).times(BigInteger.valueOf(typed.femtometres()));
    }

    @Override
    public String format(long count) {
        return rounded(count, unit, unit.decimals()) + " " + unit.symbol();
    }

    @Override
    public String formatError(long count) {
        BigDecimal value = rounded(count, unit, unit.decimals());
        return (value.signum() > 0 ? "+" : "") + value + " " + unit.symbol();
    }

    @Override
    public String smallestSize() {
        return BigDecimal.ONE.movePointLeft(unit.decimals()) + " " + unit.symbol();
    }

    @Override
    public String decimal(long count) {
        BigDecimal mm = BigDecimal.valueOf(count, MM_EXPONENT).stripTrailingZeros();
        return mm.scale() < 0 ? mm.setScale(0).toPlainString() : mm.toPlainString();
    }

    @Override
    public long turn() {
        return 0;
    }

    /** The number in a unit with trailing zeros cut to three decimals, so that a column of lengths stays readable. */
    private static BigDecimal rounded(long count, LengthUnit unit, int decimals) {
        BigDecimal value = BigDecimal.valueOf(count)
                .divide(BigDecimal.valueOf(unit.femtometres()), decimals, RoundingMode.HALF_EVEN);
        BigDecimal shortest = value.stripTrailingZeros();
        int kept = Math.min(decimals, 3);
        return shortest.scale() <= kept ? value.setScale(kept, RoundingMode.UNNECESSARY) : shortest;
    }
}
