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
        Spans worn = usable == clean ? Spans.NONE : usable;
        for (int i = 0; i < domain.size(); i++) {
            all.fill(domain.first(i), domain.last(i), clean, worn);
        }
        all.low = Arrays.copyOf(all.low, all.size);
        all.high = Arrays.copyOf(all.high, all.size);
        all.code = Arrays.copyOf(all.code, all.size);
        return all;
    }

    /** Fills a range: what lies in some spans clean, the rest of what lies in others worn, and the rest of all not. */
    private void fill(long from, long to, Spans clean, Spans worn) {
        long next = from;
        int inWorn = worn.endingFrom(from);
        for (int i = clean.endingFrom(from); i < clean.size() && clean.first(i) <= to; i++) {
            long first = Math.max(from, clean.first(i));
            long last = Math.min(to, clean.last(i));
            inWorn = fill(next, first - 1, worn, inWorn);
            add(first, last, Reached.CLEAN);
            next = last + 1;
        }
        fill(next, to, worn, inWorn);
    }

    /** Fills a range that is not clean; returns the first span of worn ones that may go on beyond it. */
    private int fill(long from, long to, Spans worn, int firstWorn) {
        long next = from;
        int i = firstWorn;
        while (i < worn.size() && worn.last(i) < from) {
            i++;
        }
        while (i < worn.size() && worn.first(i) <= to && next <= to) {
            long first = Math.max(from, worn.first(i));
            long last = Math.min(to, worn.last(i));
            add(next, first - 1, Reached.NOT);
            add(first, last, Reached.WORN);
            next = last + 1;
            i += worn.last(i) <= to ? 1 : 0;
        }
        add(next, to, Reached.NOT);
        return i;
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
