// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage.strip;

import java.util.List;
import pitchstack.core.coverage.Reached;
import pitchstack.core.coverage.Stretch;

/**
 * How much of any range is reached in which way, found by two binary searches, so that drawing takes as long as there
 * are pixels, however many stretches the travel has. Never changed.
 */
public final class Shares {
    private final long[] low;
    private final long[] high;
    private final byte[] code;
    /** Of the stretches before each, the counts reached clean, and over worn teeth. */
    private final long[] cleanBefore;
    private final long[] wornBefore;
    /** The same for counts of any kind, since a travel may have a hole. */
    private final long[] allBefore;

    /** @param stretches ascending, without overlap; of a travel whose size fits a {@code long} */
    public Shares(List<Stretch> stretches) {
        int n = stretches.size();
        low = new long[n];
        high = new long[n];
        code = new byte[n];
        cleanBefore = new long[n + 1];
        wornBefore = new long[n + 1];
        allBefore = new long[n + 1];
        for (int i = 0; i < n; i++) {
            Stretch s = stretches.get(i);
            low[i] = s.low();
            high[i] = s.high();
            code[i] = s.reached().code();
            cleanBefore[i + 1] = cleanBefore[i] + (s.reached() == Reached.CLEAN ? s.size() : 0);
            wornBefore[i + 1] = wornBefore[i] + (s.reached() == Reached.WORN ? s.size() : 0);
            allBefore[i + 1] = allBefore[i] + s.size();
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
            return Column.of(Reached.of(code[first]));
        }
        double all = before(allBefore, null, to, last) - before(allBefore, null, from - 1, endingFrom(from - 1));
        if (all <= 0) {
            return Column.OUTSIDE;
        }
        double clean = part(cleanBefore, Reached.CLEAN, from, to);
        double worn = part(wornBefore, Reached.WORN, from, to);
        return new Column(clean / all, worn / all, (all - clean - worn) / all);
    }

    private long part(long[] sums, Reached kind, long from, long to) {
        return before(sums, kind, to, endingFrom(to)) - before(sums, kind, from - 1, endingFrom(from - 1));
    }

    /** The counts of a kind, or of any where it is {@code null}, up to a position. */
    private long before(long[] sums, Reached kind, long to, int at) {
        boolean within = at < low.length && low[at] <= to && (kind == null || code[at] == kind.code());
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
