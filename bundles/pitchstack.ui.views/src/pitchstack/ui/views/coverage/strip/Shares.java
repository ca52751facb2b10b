// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage.strip;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.coverage.CoverageChange;
import pitchstack.core.coverage.Reached;
import pitchstack.core.coverage.Stretch;

/**
 * How much of any range is reached in which way, found by two binary searches, so that drawing takes as long as there
 * are pixels, however many stretches the travel has. Never changed.
 */
public final class Shares {
    /** What is not reached, but is in what it is compared with; the other codes are those of {@link Reached}. */
    private static final byte LOST = (byte) Reached.values().length;

    private final long[] low;
    private final long[] high;
    private final byte[] code;
    /** By code, the counts of the stretches before each. */
    private final long[][] before;
    /** The same for counts of any kind, since a travel may have a hole. */
    private final long[] allBefore;

    private record Piece(long low, long high, byte code) { }

    private Shares(Piece[] pieces) {
        int n = pieces.length;
        low = new long[n];
        high = new long[n];
        code = new byte[n];
        before = new long[LOST + 1][n + 1];
        allBefore = new long[n + 1];
        for (int i = 0; i < n; i++) {
            low[i] = pieces[i].low;
            high[i] = pieces[i].high;
            code[i] = pieces[i].code;
            long size = high[i] - low[i] + 1;
            for (int kind = 0; kind <= LOST; kind++) {
                before[kind][i + 1] = before[kind][i] + (kind == code[i] ? size : 0);
            }
            allBefore[i + 1] = allBefore[i] + size;
        }
    }

    /** @param stretches ascending, without overlap; of a travel whose size fits a {@code long} */
    public Shares(List<Stretch> stretches) {
        this(stretches.stream().map(s -> new Piece(s.low(), s.high(), s.reached().code())).toArray(Piece[]::new));
    }

    /**
     * Tells what is lost apart from what was not reached before either.
     *
     * @param stretches as above
     * @param lost what is lost, ascending, all of it in stretches that are not reached
     */
    public static Shares comparing(List<Stretch> stretches, List<CoverageChange.Changed> lost) {
        List<Piece> pieces = new ArrayList<>();
        int next = 0;
        for (Stretch stretch : stretches) {
            long from = stretch.low();
            for (; next < lost.size() && lost.get(next).low() <= stretch.high(); next++) {
                add(pieces, from, lost.get(next).low() - 1, stretch.reached().code());
                add(pieces, lost.get(next).low(), lost.get(next).high(), LOST);
                from = lost.get(next).high() + 1;
            }
            add(pieces, from, stretch.high(), stretch.reached().code());
        }
        return new Shares(pieces.toArray(Piece[]::new));
    }

    private static void add(List<Piece> pieces, long low, long high, byte code) {
        if (low <= high) {
            pieces.add(new Piece(low, high, code));
        }
    }

    /** Whether there is no travel at all. */
    public boolean isEmpty() {
        return low.length == 0;
    }

    /** The lowest position; there must be one. */
    public long lowest() {
        return low[0];
    }

    /** The highest position; there must be one. */
    public long highest() {
        return high[high.length - 1];
    }

    /**
     * What lies between two positions, both included.
     *
     * @param from the lower
     * @param to the upper, at least {@code from}
     */
    public Column between(long from, long to) {
        int first = endingFrom(from);
        int last = endingFrom(to);
        boolean inside = first == last && first < low.length && low[first] <= from;
        if (inside) {
            return code[first] == LOST ? Column.LOST : Column.of(Reached.of(code[first]));
        }
        double all = upTo(allBefore, -1, to) - upTo(allBefore, -1, from - 1);
        if (all <= 0) {
            return Column.OUTSIDE;
        }
        double clean = part(Reached.CLEAN.code(), from, to);
        double worn = part(Reached.WORN.code(), from, to);
        double lost = part(LOST, from, to);
        return new Column(clean / all, worn / all, (all - clean - worn - lost) / all, lost / all);
    }

    private long part(int kind, long from, long to) {
        return upTo(before[kind], kind, to) - upTo(before[kind], kind, from - 1);
    }

    /** The counts of a kind, or of any where it is below 0, up to a position. */
    private long upTo(long[] sums, int kind, long to) {
        int at = endingFrom(to);
        boolean within = at < low.length && low[at] <= to && (kind < 0 || code[at] == kind);
        return sums[at] + (within ? to - low[at] + 1 : 0);
    }

    /** The first stretch that ends at or above a position, or their number. */
    private int endingFrom(long position) {
        int a = 0;
        int b = high.length;
        while (a < b) {
            int middle = (a + b) >>> 1;
            if (high[middle] < position) {
                a = middle + 1;
            } else {
                b = middle;
            }
        }
        return a;
    }

    /** The columns of a strip, from left to right. */
    public Column[] columns(Sight sight, int width) {
        Column[] columns = new Column[width];
        for (int x = 0; x < width; x++) {
            long from = (long) Math.ceil(sight.position(x, width));
            long to = (long) Math.ceil(sight.position(x + 1, width)) - 1;
            columns[x] = between(from, Math.max(from, to));
        }
        return columns;
    }
}
