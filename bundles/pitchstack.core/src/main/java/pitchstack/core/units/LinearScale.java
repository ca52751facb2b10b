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
 * @param fractions whether a position that is a whole number of 64ths of an inch is shown as one, where inches are shown:
 *     {@code 37 5/8 in}; all others are decimals, since a rounded fraction would be a false one
 */
public record LinearScale(LengthUnit unit, boolean fractions) implements Scale {
    private static final long FINEST_FRACTION = 64;
    private static final Pattern QUANTITY = Pattern.compile("\\s*([^a-zA-Zµμ\"″]+?)\\s*([a-zA-Zµμ\"″]*)\\s*");
    private static final int MM_EXPONENT = 12;
    private static final int WAY_DECIMALS = 3;

    /** A scale that shows decimals. */
    public LinearScale(LengthUnit unit) {
        this(unit, false);
    }

    @Override
    public long parse(String text) {
        Matcher m = QUANTITY.matcher(text);
        if (!m.matches()) {
            throw new QuantityException("“" + text.strip() + "” is not a length; write it like 37.625 in, 37 5/8 in, "
                    + "742.3 mm or 20 µm.");
        }
        LengthUnit typed = m.group(2).isEmpty() ? unit : LengthUnit.spelled(m.group(2)).orElseThrow(
                () -> new QuantityException("“" + m.group(2) + "” is not a unit of length here; use mm, in, thou or um."));
        return Ratio.parse(m.group(1)).times(BigInteger.valueOf(typed.femtometres()));
    }

    @Override
    public String format(long count) {
        long grain = unit.femtometres() / FINEST_FRACTION;
        return fractions && unit == LengthUnit.INCH && count % grain == 0 ? fraction(count / grain) + " " + unit.symbol()
                : rounded(count, unit, unit.decimals()) + " " + unit.symbol();
    }

    private static String fraction(long parts) {
        long whole = Math.abs(parts / FINEST_FRACTION);
        long rest = Math.abs(parts % FINEST_FRACTION);
        String sign = parts < 0 ? "-" : "";
        if (rest == 0) {
            return sign + whole;
        }
        long common = Long.lowestOneBit(rest);
        return sign + (whole == 0 ? "" : whole + " ") + rest / common + "/" + FINEST_FRACTION / common;
    }

    @Override
    public String formatError(long count) {
        BigDecimal value = rounded(count, unit, unit.decimals());
        return (value.signum() > 0 ? "+" : "") + value + " " + unit.symbol();
    }

    @Override
    public String formatWay(long count) {
        return rounded(Math.abs(count), unit, WAY_DECIMALS) + " " + unit.symbol();
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
        int kept = Math.min(decimals, WAY_DECIMALS);
        return shortest.scale() <= kept ? value.setScale(kept, RoundingMode.UNNECESSARY) : shortest;
    }
}
