// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

/** Numbers for machines: a decimal point in every country, no exponent, no trailing zeros. */
public final class Decimals {
    private static final int MOST_PLACES = 9;
    private static final long[] POWERS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000, 10_000_000, 100_000_000,
        1_000_000_000};
    /** Up to here every rounded multiple of the last place is a whole number that a double holds. */
    private static final double LARGEST = 9e15;

    private Decimals() {
    }

    /**
     * Writes a number, rounded to its last place, half up.
     *
     * @param value at most 9·10¹⁵ of its last places
     * @param places decimal places, 0 to 9
     * @throws IllegalArgumentException if it is no such number
     */
    public static String of(double value, int places) {
        StringBuilder text = new StringBuilder();
        append(text, value, places);
        return text.toString();
    }

    /** The same, at the end of a text. */
    public static void append(StringBuilder text, double value, int places) {
        double scaled = places >= 0 && places <= MOST_PLACES ? value * POWERS[places] : Double.NaN;
        if (!(Math.abs(scaled) <= LARGEST)) {
            throw new IllegalArgumentException(value + " cannot be written with " + places + " places");
        }
        long count = Math.round(scaled);
        if (count < 0) {
            text.append('-');
        }
        long size = Math.abs(count);
        text.append(size / POWERS[places]);
        appendFraction(text, size % POWERS[places], places);
    }

    private static void appendFraction(StringBuilder text, long fraction, int places) {
        if (fraction == 0) {
            return;
        }
        text.append('.');
        long rest = fraction;
        for (int i = places - 1; rest > 0; i--) {
            text.append((char) ('0' + rest / POWERS[i]));
            rest %= POWERS[i];
        }
    }
}
