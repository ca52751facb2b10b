// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Arrays;

/** Takes spans in the order of their starts. */
final class SpansBuilder {
    private static final int FIRST_ROOM = 16;
    private final long join;
    private final int most;
    private long[] first;
    private long[] last;
    private int size;

    /**
     * @param join the largest distance, from the end of one span to the start of the next, that makes them one
     * @param most the most spans
     */
    SpansBuilder(long join, int most) {
        this(join, most, Math.min(most, FIRST_ROOM));
    }

    /** The same with room for some. */
    SpansBuilder(long join, int most, int room) {
        this.join = join;
        this.most = most;
        this.first = new long[room];
        this.last = new long[room];
    }

    /**
     * Adds a span that starts no lower than those before.
     *
     * @throws TooMuch if there are too many
     */
    void add(long from, long to) {
        if (size > 0 && from - last[size - 1] <= join) {
            last[size - 1] = Math.max(last[size - 1], to);
            return;
        }
        if (size == first.length) {
            grow();
        }
        first[size] = from;
        last[size++] = to;
    }

    private void grow() {
        if (size >= most) {
            throw new TooMuch();
        }
        int room = (int) Math.min(most, 2L * size);
        first = Arrays.copyOf(first, room);
        last = Arrays.copyOf(last, room);
    }

    Spans build() {
        boolean roomy = first.length > 2 * size;
        return new Spans(roomy ? Arrays.copyOf(first, size) : first, roomy ? Arrays.copyOf(last, size) : last, size);
    }
}
