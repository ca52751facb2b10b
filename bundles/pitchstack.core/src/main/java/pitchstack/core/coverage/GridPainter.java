// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import pitchstack.core.coverage.Bounds.Arc;

/**
 * Works out a grid along a linear axis. Laps in which every group of offsets or none lies, at each kind of teeth, look
 * alike and are painted from one; what lies near an end, a stop or a marked tooth is worked out exactly and painted
 * span by span.
 */
final class GridPainter {
    /** Fewer laps alike are not worth a pattern of their own. */
    private static final int FEWEST_LAPS = 3;

    private final Grid grid;
    private final long tolerance;
    private final long join;
    private final Scan clean;
    private final Scan usable;
    private final byte[] cells;
    private final Map<Integer, Period> periods = new HashMap<>();
    /** The first cell not yet painted. */
    private int next;

    /**
     * @param grid the cells of one span of travel
     * @param tolerance itself included
     * @param clean what is reached clean
     * @param usable what is reached clean or over worn teeth, of some places
     */
    GridPainter(Grid grid, long tolerance, Scan clean, Scan usable) {
        this.grid = grid;
        this.tolerance = Math.min(tolerance, Scan.ANY);
        this.join = Scan.joinOf(tolerance);
        this.clean = clean;
        this.usable = usable;
        this.cells = new byte[grid.cells()];
    }

    byte[] paint() {
        if (!usable.isEmpty() && cells.length > 0) {
            Arc all = usable.allPlaces();
            // The laps at the ends may be cut by a stop.
            long end = usable.places().lapOf(all.high()) - 1;
            long lap = usable.places().lapOf(all.low()) + 1;
            while (lap <= end) {
                long until = Math.min(end, Math.min(usable.alikeUntil(lap), clean.alikeUntil(lap)));
                if (until - lap + 1 >= FEWEST_LAPS) {
                    paintAlike(lap, until);
                }
                lap = Math.max(lap, until) + 1;
            }
        }
        paintExactly(cells.length);
        return cells;
    }

    private void paintAlike(long lap, long until) {
        Places places = usable.places();
        long low = places.base(lap) + tolerance;
        long high = places.base(until + 1) - tolerance;
        int from = grid.cellFrom(0, low);
        int to = grid.cellFrom(0, high);
        if (low < high && from < to) {
            paintExactly(from);
            long first = grid.position(from);
            boolean good = clean.isFull(lap);
            boolean any = usable.isFull(lap);
            Period period = periods.computeIfAbsent(good ? 1 : any ? 2 : 3, key -> period(any, good));
            period.paint(cells, from, to, first - places.base(places.lapOf(first)));
            next = to;
        }
    }

    /** What a lap far from others looks like whose neighbours look like it. */
    private Period period(boolean any, boolean good) {
        long pitch = usable.places().laps.pitch();
        return new Period(Stretches.of(Spans.of(0, pitch - 1), any ? around(usable) : Spans.NONE,
                good ? around(clean) : Spans.NONE), pitch, grid.step());
    }

    private Spans around(Scan scan) {
        long pitch = scan.places().laps.pitch();
        return join >= pitch ? Spans.of(0, pitch - 1) : scan.tree(join).all().widened(tolerance).wrapped(pitch, 1);
    }

    /** Paints what has been left out up to a cell. */
    private void paintExactly(int to) {
        if (next >= to) {
            return;
        }
        Arrays.fill(cells, next, to, Reached.NOT.code());
        grid.paint(cells, 0, next, to, near(usable, to), Reached.WORN.code());
        grid.paint(cells, 0, next, to, near(clean, to), Reached.CLEAN.code());
        next = to;
    }

    private Spans near(Scan scan, int to) {
        if (scan.isEmpty()) {
            return Spans.NONE;
        }
        Arc all = scan.allPlaces();
        long fromLap = scan.places().lapOf(Math.max(all.low(), grid.position(next) - tolerance));
        long toLap = scan.places().lapOf(Math.min(all.high(), grid.position(to - 1) + tolerance));
        return scan.runs(fromLap, toLap, join).widened(tolerance);
    }
}
