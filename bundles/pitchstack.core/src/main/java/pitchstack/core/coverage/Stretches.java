// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.RandomAccess;

/** Ascending stretches that leave nothing out of a domain, held in arrays. Never changed. */
final class Stretches extends AbstractList<Stretch> implements RandomAccess {
    private long[] low = new long[16];
    private long[] high = new long[16];
    private byte[] code = new byte[16];
    private int size;

    private Stretches() { }

    /**
     * Tells apart what is reached clean, only over worn teeth, or not.
     *
     * @param domain what is to be told apart
     * @param usable what is reached clean or over worn teeth
     * @param clean what is reached clean, all of it in {@code usable}
     */
    static Stretches of(Spans domain, Spans usable, Spans clean) {
        Stretches all = new Stretches();
        for (int i = 0; i < domain.size(); i++) {
            all.fill(domain.first(i), domain.last(i), usable, Reached.NOT,
                    (from, to) -> all.fill(from, to, clean, Reached.WORN,
                            (first, last) -> all.add(first, last, Reached.CLEAN)));
        }
        all.low = Arrays.copyOf(all.low, all.size);
        all.high = Arrays.copyOf(all.high, all.size);
        all.code = Arrays.copyOf(all.code, all.size);
        return all;
    }

    private interface Filler {
        void fill(long from, long to);
    }

    /** Fills a range: what lies in some spans in one way, the rest with one literal. */
    private void fill(long from, long to, Spans some, Reached rest, Filler inside) {
        long next = from;
        for (int i = some.endingFrom(from); i < some.size() && some.first(i) <= to; i++) {
            long first = Math.max(from, some.first(i));
            long last = Math.min(to, some.last(i));
            add(next, first - 1, rest);
            inside.fill(first, last);
            next = last + 1;
        }
        add(next, to, rest);
    }

    private void add(long from, long to, Reached reached) {
        if (from > to) {
            return;
        }
        if (size == low.length) {
            low = Arrays.copyOf(low, 2 * size);
            high = Arrays.copyOf(high, 2 * size);
            code = Arrays.copyOf(code, 2 * size);
        }
        low[size] = from;
        high[size] = to;
        code[size++] = reached.code();
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public Stretch get(int i) {
        return new Stretch(low(i), high[i], Reached.of(code[i]));
    }

    long low(int i) {
        return low[i];
    }

    long high(int i) {
        return high[i];
    }

    byte code(int i) {
        return code[i];
    }

    /** The stretch a position lies in, or −1. */
    int at(long position) {
        int found = Arrays.binarySearch(low, position);
        int before = found < 0 ? -found - 2 : found;
        return before >= 0 && position <= high[before] ? before : -1;
    }
}
