// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Arrays;

/** Ascending spans that do not meet, each from {@code first[i]} to {@code last[i]}, both included. Never changed. */
final class Spans {
    static final Spans NONE = new Spans(new long[0], new long[0], 0);

    private final long[] first;
    private final long[] last;
    private final int size;

    /** Takes over arrays that are at least as long as there are spans. */
    Spans(long[] first, long[] last, int size) {
        this.first = first;
        this.last = last;
        this.size = size;
    }

    int size() {
        return size;
    }

    boolean isEmpty() {
        return size == 0;
    }

    long first(int i) {
        return first[i];
    }

    long last(int i) {
        return last[i];
    }

    /** The start of the first span; there must be one. */
    long lowest() {
        return first[0];
    }

    /** The end of the last span; there must be one. */
    long highest() {
        return last[size - 1];
    }

    /** The first span that ends at or above a number, or the size. */
    int endingFrom(long least) {
        int found = Arrays.binarySearch(last, 0, size, least);
        return found < 0 ? -found - 1 : found;
    }

    /** Both together; spans with at most {@code join} from the end of one to the start of the next become one. */
    Spans or(Spans other, long join) {
        if (isEmpty() || other.isEmpty()) {
            return isEmpty() ? other : this;
        }
        SpansBuilder both = new SpansBuilder(join, Integer.MAX_VALUE, size + other.size);
        int i = 0;
        int k = 0;
        while (i < size || k < other.size) {
            if (k == other.size || i < size && first[i] <= other.first[k]) {
                both.add(first[i], last[i++]);
            } else {
                both.add(other.first[k], other.last[k++]);
            }
        }
        return both.build();
    }

    /** What lies in both. */
    Spans and(Spans other) {
        SpansBuilder both = new SpansBuilder(0, Integer.MAX_VALUE);
        int i = 0;
        int k = 0;
        while (i < size && k < other.size) {
            long from = Math.max(first[i], other.first[k]);
            long to = Math.min(last[i], other.last[k]);
            if (from <= to) {
                both.add(from, to);
            }
            if (last[i] < other.last[k]) {
                i++;
            } else {
                k++;
            }
        }
        return both.build();
    }

    /** All of them longer at both ends; those that then meet or stand side by side become one. */
    Spans widened(long by) {
        SpansBuilder wide = new SpansBuilder(1, Integer.MAX_VALUE, size);
        for (int i = 0; i < size; i++) {
            wide.add(first[i] - by, last[i] + by);
        }
        return wide.build();
    }

    /**
     * All of them brought back into [0, turn).
     *
     * @param turn how far apart two numbers are that count as one, above 0
     * @param join the largest distance within one span
     */
    Spans wrapped(long turn, long join) {
        return isEmpty() ? this
                : wrapped(turn, join, Math.floorDiv(lowest(), turn), Math.floorDiv(highest(), turn) + 1);
    }

    /** Those of the turns from one up to but not including another, halved until one is left. */
    private Spans wrapped(long turn, long join, long from, long to) {
        if (to - from > 1) {
            long middle = Math.floorDiv(from + to, 2L);
            return wrapped(turn, join, from, middle).or(wrapped(turn, join, middle, to), join);
        }
        SpansBuilder part = new SpansBuilder(join, Integer.MAX_VALUE);
        long base = from * turn;
        for (int i = endingFrom(base); i < size && first[i] < base + turn; i++) {
            part.add(Math.max(first[i] - base, 0), Math.min(last[i] - base, turn - 1));
        }
        return part.build();
    }

    /** The widest distance from the end of a span to the start of the next; 0 where there is no next. */
    long widestGap() {
        long widest = 0;
        for (int i = 1; i < size; i++) {
            widest = Math.max(widest, first[i] - last[i - 1]);
        }
        return widest;
    }

    /** One span, or none where it ends below its start. */
    static Spans of(long first, long last) {
        return first > last ? NONE : new Spans(new long[] {first}, new long[] {last}, 1);
    }
}
