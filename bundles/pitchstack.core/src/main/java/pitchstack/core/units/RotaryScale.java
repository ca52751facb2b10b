// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Angles as whole divisions of one turn, chosen so that a turn, an arc second and the divisions of every ring of the
 * axis are whole.
 *
 * @param turn counts in one turn, a multiple of 1 296 000 (the arc seconds in a turn)
 */
public record RotaryScale(long turn) implements Scale {
    /** Arc seconds in one turn. */
    public static final long ARC_SECONDS = 360L * 60 * 60;
    /** Indices of a few thousand teeth times six stages must not overflow: 2⁶³ / 2⁵⁶ turns are 128. */
    private static final int LARGEST_TURN_BITS = 56;
    private static final int DECIMALS = 15;
    /** A thousandth of an arc second moves a tooth at 1 m from the centre by 5 nm. */
    private static final int SECOND_DECIMALS = 3;
    private static final String NUMBER = "(\\d+\\.?\\d*|\\.\\d+|\\d+\\s+\\d+/\\d+|\\d+/\\d+)\\s*";
    private static final Pattern QUANTITY = Pattern.compile("\\s*([+-]?)\\s*"
            // A number without a sign is in degrees only where nothing follows: 30" must not be 3 degrees and 0".
            + "(?:" + NUMBER + "(?:°|deg|degrees?|d|$))?\\s*"
            + "(?:" + NUMBER + "(?:'|′|arcmin|min))?\\s*"
            + "(?:" + NUMBER + "(?:\"|″|''|arcsec|sec))?\\s*");

    /** Checks the turn. */
    public RotaryScale {
        if (turn <= 0 || turn % ARC_SECONDS != 0) {
            throw new IllegalArgumentException("A turn must be a positive multiple of " + ARC_SECONDS + ", not " + turn);
        }
    }

    /**
     * The scale on which each of these numbers of teeth divides a turn into whole counts, and decimals of an arc
     * second to a millionth are whole too where there is room.
     *
     * @param teethPerTurn numbers of teeth, each at least 1
     * @throws QuantityException if no such unit fits
     */
    public static RotaryScale dividing(Collection<Long> teethPerTurn) {
        BigInteger turn = BigInteger.valueOf(ARC_SECONDS);
        for (long n : teethPerTurn) {
            BigInteger teeth = BigInteger.valueOf(n);
            turn = turn.multiply(teeth).divide(turn.gcd(teeth));
            if (turn.bitLength() > LARGEST_TURN_BITS) {
                throw new QuantityException("The rings of this axis have no common division small enough to count in; "
                        + "choose numbers of teeth with more common factors.");
            }
        }
        for (int digit = 0; digit < 6 && turn.bitLength() <= LARGEST_TURN_BITS - 4; digit++) {
            turn = turn.multiply(BigInteger.TEN);
        }
        return new RotaryScale(turn.longValueExact());
    }

    @Override
    public long parse(String text) {
        Matcher m = QUANTITY.matcher(text.replace('−', '-'));
        if (!m.matches() || (m.group(2) == null && m.group(3) == null && m.group(4) == null)) {
            throw new QuantityException("“" + text.strip() + "” is not an angle; write it like 12.5, 12.5°, "
                    + "12°34'56\" or 30 arcsec.");
        }
        BigInteger sum = part(m.group(2), ARC_SECONDS / 360).add(part(m.group(3), 60)).add(part(m.group(4), 1));
        long size = Ratio.toLong(new BigDecimal(sum));
        return m.group(1).equals("-") ? -size : size;
    }

    private BigInteger part(String number, long arcSeconds) {
        return number == null ? BigInteger.ZERO : BigInteger.valueOf(
                Ratio.parse(number).times(BigInteger.valueOf(turn / ARC_SECONDS).multiply(BigInteger.valueOf(arcSeconds))));
    }

    @Override
    public String format(long count) {
        BigDecimal seconds = seconds(count).abs();
        BigDecimal[] minutes = seconds.divideAndRemainder(BigDecimal.valueOf(60));
        BigDecimal[] degrees = minutes[0].divideAndRemainder(BigDecimal.valueOf(60));
        String rest = twoDigits(minutes[1]) + fraction(minutes[1]);
        return (seconds(count).signum() < 0 ? "-" : "") + degrees[0].toBigInteger() + "°"
                + twoDigits(degrees[1]) + "'" + rest + "\"";
    }

    private static String twoDigits(BigDecimal part) {
        return String.format(Locale.ROOT, "%02d", part.intValue());
    }

    private static String fraction(BigDecimal seconds) {
        BigDecimal f = seconds.remainder(BigDecimal.ONE).stripTrailingZeros();
        return f.signum() == 0 ? "" : f.toPlainString().substring(1);
    }

    @Override
    public String formatError(long count) {
        BigDecimal s = seconds(count).stripTrailingZeros();
        return (s.signum() > 0 ? "+" : "") + (s.scale() < 0 ? s.setScale(0) : s).toPlainString() + "\"";
    }

    @Override
    public String smallestSize() {
        return BigDecimal.ONE.movePointLeft(SECOND_DECIMALS) + "\"";
    }

    private BigDecimal seconds(long count) {
        return BigDecimal.valueOf(count)
                .divide(BigDecimal.valueOf(turn / ARC_SECONDS), SECOND_DECIMALS, RoundingMode.HALF_EVEN);
    }

    @Override
    public String decimal(long count) {
        BigDecimal degrees = BigDecimal.valueOf(count).multiply(BigDecimal.valueOf(360))
                .divide(BigDecimal.valueOf(turn), DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return (degrees.scale() < 0 ? degrees.setScale(0) : degrees).toPlainString();
    }
}
