// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An exact fraction as a person types it: {@code 12}, {@code -0.25}, {@code 5/8} or {@code 37 5/8}.
 *
 * @param numerator any whole number
 * @param denominator at least 1
 */
record Ratio(BigInteger numerator, BigInteger denominator) {
    /** A longer number is a slip of the keyboard, and would only cost time. */
    private static final int LONGEST_TEXT = 60;
    private static final Pattern DECIMAL = Pattern.compile("([+-]?)(\\d+\\.?\\d*|\\.\\d+)");
    private static final Pattern FRACTION = Pattern.compile("([+-]?)(?:(\\d+)[\\s-]+)?(\\d+)\\s*/\\s*(\\d+)");

    /**
     * Reads a number.
     *
     * @param text the number without a unit
     * @return its exact value
     * @throws QuantityException if the text is no number, or has a decimal comma or a zero denominator
     */
    static Ratio parse(String text) {
        String t = text.strip().replace('−', '-');
        if (t.length() > LONGEST_TEXT) {
            throw new QuantityException("A number of " + t.length() + " characters is too long; "
                    + LONGEST_TEXT + " are allowed.");
        }
        Matcher fraction = FRACTION.matcher(t);
        if (fraction.matches()) {
            return ofFraction(text, fraction);
        }
        if (DECIMAL.matcher(t).matches()) {
            BigDecimal d = new BigDecimal(t);
            return d.scale() <= 0
                    ? new Ratio(d.toBigIntegerExact(), BigInteger.ONE)
                    : new Ratio(d.unscaledValue(), BigInteger.TEN.pow(d.scale()));
        }
        throw new QuantityException("“" + text.strip() + "” is not a number; write it like 12.5, 5/8 or 37 5/8"
                + (t.indexOf(',') >= 0 ? ", with a point and not a comma." : "."));
    }

    private static Ratio ofFraction(String text, Matcher m) {
        BigInteger den = new BigInteger(m.group(4));
        if (den.signum() == 0) {
            throw new QuantityException("“" + text.strip() + "” divides by zero.");
        }
        BigInteger whole = m.group(2) == null ? BigInteger.ZERO : new BigInteger(m.group(2));
        BigInteger num = whole.multiply(den).add(new BigInteger(m.group(3)));
        return new Ratio(m.group(1).equals("-") ? num.negate() : num, den);
    }

    /** Whether the value is zero or below. */
    boolean isNotPositive() {
        return numerator.signum() <= 0;
    }

    /** The value as a decimal of the given significant digits' context. */
    BigDecimal toDecimal(java.math.MathContext context) {
        return new BigDecimal(numerator).divide(new BigDecimal(denominator), context);
    }

    /**
     * This many times a unit, rounded half to even to the nearest whole count.
     *
     * @param unit size of the unit in counts
     * @return the rounded product
     * @throws QuantityException if it does not fit a {@code long}
     */
    long times(BigInteger unit) {
        BigDecimal product = new BigDecimal(numerator.multiply(unit));
        return toLong(product.divide(new BigDecimal(denominator), 0, RoundingMode.HALF_EVEN));
    }

    /** A decimal count as a {@code long}, rounded half to even. */
    static long toLong(BigDecimal count) {
        BigInteger rounded = count.setScale(0, RoundingMode.HALF_EVEN).toBigInteger();
        if (rounded.bitLength() > 63) {
            throw new QuantityException("That is more than the program can hold; "
                    + "lengths reach to 9000 m and angles to many turns.");
        }
        return rounded.longValue();
    }
}
