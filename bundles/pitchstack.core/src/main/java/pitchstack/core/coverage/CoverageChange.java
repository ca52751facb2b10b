// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.ArrayList;
import java.util.List;

/**
 * Where two coverages differ. What lies beyond the travel of one is not reached in it.
 *
 * @param changed the stretches that are reached in different ways, lowest first
 */
public record CoverageChange(List<Changed> changed) {
    /**
     * Neighbouring positions whose coverage changes alike, both ends included, in counts.
     *
     * @param low the lowest
     * @param high the highest
     * @param before how they are reached in the first coverage
     * @param after how in the second
     */
    public record Changed(long low, long high, Reached before, Reached after) {
        /** How many counts it holds, both ends included. */
        public long size() {
            return high - low + 1;
        }
    }

    /** Copies the list. */
    public CoverageChange {
        changed = List.copyOf(changed);
    }

    /** What changes from one coverage to another of the same axis. */
    public static CoverageChange between(Coverage before, Coverage after) {
        List<Changed> changed = new ArrayList<>();
        Cursor one = new Cursor(before.stretches());
        Cursor two = new Cursor(after.stretches());
        long at = Math.min(one.next(Long.MIN_VALUE), two.next(Long.MIN_VALUE));
        while (at < Long.MAX_VALUE) {
            Reached was = one.at(at);
            Reached is = two.at(at);
            long next = Math.min(one.next(at), two.next(at));
            if (was != is) {
                add(changed, new Changed(at, next - 1, was, is));
            }
            at = next;
        }
        return new CoverageChange(changed);
    }

    private static void add(List<Changed> changed, Changed one) {
        int last = changed.size() - 1;
        boolean goesOn = last >= 0 && changed.get(last).high + 1 == one.low && changed.get(last).before == one.before
                && changed.get(last).after == one.after;
        if (goesOn) {
            changed.set(last, new Changed(changed.get(last).low, one.high, one.before, one.after));
        } else {
            changed.add(one);
        }
    }

    /** What was reached and is so no longer. */
    public List<Changed> lost() {
        return changed.stream().filter(c -> c.before != Reached.NOT && c.after == Reached.NOT).toList();
    }

    /** What was reached clean and now only over worn teeth. */
    public List<Changed> wornOnly() {
        return changed.stream().filter(c -> c.before == Reached.CLEAN && c.after == Reached.WORN).toList();
    }

    /** What is reached in a better way than before. */
    public List<Changed> better() {
        return changed.stream().filter(c -> c.after.compareTo(c.before) < 0).toList();
    }

    /** The sum of the sizes of some changes, in counts. */
    public static long size(List<Changed> some) {
        return some.stream().mapToLong(Changed::size).sum();
    }

    /** Follows ascending stretches. */
    private static final class Cursor {
        private final List<Stretch> stretches;
        private int i;

        private Cursor(List<Stretch> stretches) {
            this.stretches = stretches;
        }

        /** How a position is reached; asked for ascending ones. */
        private Reached at(long position) {
            while (i < stretches.size() && stretches.get(i).high() < position) {
                i++;
            }
            boolean inside = i < stretches.size() && stretches.get(i).low() <= position;
            return inside ? stretches.get(i).reached() : Reached.NOT;
        }

        /** The first position above the last asked for at which a stretch begins, or one is past; else the largest. */
        private long next(long position) {
            if (i == stretches.size()) {
                return Long.MAX_VALUE;
            }
            Stretch stretch = stretches.get(i);
            return stretch.low() > position ? stretch.low() : stretch.high() + 1;
        }
    }
}
