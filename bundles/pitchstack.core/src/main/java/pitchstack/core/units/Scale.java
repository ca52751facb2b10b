// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.units;

/**
 * The whole-number unit of one axis, with the text people read and write on it. Positions, pitches and tolerances of
 * an axis are all counts on its scale.
 */
public sealed interface Scale permits LinearScale, RotaryScale {
    /**
     * Reads a position, a difference or a tolerance.
     *
     * @param text a number with or without a unit; without one, the unit shown on this axis
     * @return the count, rounded half to even where the text falls between two
     * @throws QuantityException with a sentence if the text cannot be read or does not fit
     */
    long parse(String text);

    /**
     * A count as people read it, rounded to the decimals of the unit shown, with the unit.
     *
     * @param count any count
     */
    String format(long count);

    /**
     * A signed difference as people read it, with the unit: {@code +0.010 mm}, {@code -3"}.
     *
     * @param count any count
     */
    String formatError(long count);

    /**
     * The size of a difference as people read it, without a sign.
     *
     * @param count any count but the smallest {@code long}
     */
    default String formatSize(long count) {
        String text = formatError(Math.abs(count));
        return text.startsWith("+") ? text.substring(1) : text;
    }

    /**
     * A long way as people read it, such as a travel or the length of a row: on a linear axis rounded to a thousandth of the
     * unit shown, since a longer tail of decimals says nothing there.
     *
     * @param count any count but the smallest {@code long}
     */
    default String formatWay(long count) {
        return formatSize(count);
    }

    /** The smallest size that people read on this scale, with its unit: {@code 0.0001 mm}. */
    String smallestSize();

    /**
     * A count as a plain decimal without a unit, for machines: millimetres on a linear axis (exact), degrees on a
     * rotary one (to 15 decimals).
     *
     * @param count any count
     */
    String decimal(long count);

    /** Counts in one turn, or 0 on a linear axis, where positions do not come round again. */
    long turn();

    /** A position brought into [0, turn) on a rotary axis; the same count on a linear one. */
    default long wrap(long count) {
        return turn() == 0 ? count : Math.floorMod(count, turn());
    }

    /**
     * The signed difference {@code position - target}; on a rotary axis the short way round, in (−turn/2, turn/2].
     *
     * @param position any count
     * @param target any count
     * @throws ArithmeticException if the difference on a linear axis does not fit a {@code long}
     */
    default long difference(long position, long target) {
        if (turn() == 0) {
            return Math.subtractExact(position, target);
        }
        long wrapped = Math.floorMod(wrap(position) - wrap(target), turn());
        return wrapped > turn() / 2 ? wrapped - turn() : wrapped;
    }
}
