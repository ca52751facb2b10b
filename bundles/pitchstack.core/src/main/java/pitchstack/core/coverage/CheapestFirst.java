// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import pitchstack.core.coverage.Bounds.Arc;

/**
 * Paints single laps of a grid along a linear axis: the offsets in the order of what they cost together with the teeth
 * of the coarse stage, each where nothing has been painted yet, until the lap is full. That order is the same for all
 * laps above home and for all below; about home both are painted, and the offsets of home itself.
 */
final class CheapestFirst {
    private static final byte UP = 1;
    private static final byte HOME = 0;
    private static final byte DOWN = -1;
    private static final byte NOT = Byte.MAX_VALUE;

    private final int[] cells;
    private final Grid grid;
    private final Arc window;
    private final EffortSource source;
    private final Places places;
    private final Rankings rankings;
    /** The laps of offsets, each of which stands for an index. */
    private final long[] relative;
    /** By lap of offsets: where its index stands on the grid, seen from the first cell of the lap. */
    private final long[] first;
    private final long[] phase;
    /** By lap of offsets: how its index is reached from home, or that it is not to be used. */
    private final byte[] way;
    /** By cell of the lap, a bit for what needs no more paint. */
    private final Painted painted;

    /**
     * @param cells the efforts, of which lesser ones are kept
     * @param window the places that count
     * @param rankings of their offsets, which reach no farther than a pitch
     */
    CheapestFirst(int[] cells, Grid grid, Arc window, EffortSource source, Rankings rankings) {
        this.cells = cells;
        this.grid = grid;
        this.window = window;
        this.source = source;
        this.places = source.places();
        this.rankings = rankings;
        this.relative = rankings.relative();
        this.first = new long[relative.length];
        this.phase = new long[relative.length];
        this.way = new byte[relative.length];
        this.painted = new Painted(cells, source.extra());
    }

    /** Paints all that lies in a lap. */
    void paint(long lap) {
        long from = Math.max(0, grid.cellNumber(places.base(lap)));
        long to = Math.min(cells.length, grid.cellNumber(places.base(lap + 1)));
        if (from >= to) {
            return;
        }
        boolean up = false;
        boolean home = false;
        boolean down = false;
        for (int r = 0; r < way.length; r++) {
            long index = lap - relative[r];
            way[r] = !source.has(index) ? NOT : (byte) Long.signum(index - source.home());
            up |= way[r] == UP;
            home |= way[r] == HOME;
            down |= way[r] == DOWN;
            if (way[r] != NOT) {
                long at = places.base(lap) + places.error(index) + rankings.lowest();
                long cell = grid.cellNumber(at);
                first[r] = cell - from;
                phase[r] = grid.positionOf(cell) - at;
            }
        }
        long perTooth = source.cost().perToothMs();
        paint(up, lap, UP, source.addReleased() + perTooth * (lap - source.home()), from, to);
        paint(home, lap, HOME, source.extra(), from, to);
        paint(down, lap, DOWN, source.addReleased() + perTooth * (source.home() - lap), from, to);
    }

    /** Paints the offsets whose index is reached in one way, if there are any. */
    private void paint(boolean any, long lap, byte wanted, long add, long from, long to) {
        if (!any || !painted.begin((int) from, (int) to)) {
            return;
        }
        RankedOffsets ranked = wanted == HOME ? rankings.ofLap(lap - source.home())
                : rankings.order(wanted == UP, false);
        paint(ranked, lap, wanted, add);
        if (!painted.isFull() && !ranked.isComplete()) {
            paint(rankings.order(wanted == UP, true), lap, wanted, add);
        }
    }

    private void paint(RankedOffsets ranked, long lap, byte wanted, long add) {
        boolean cut = places.base(lap) - 2 * places.laps.pitch() < window.low()
                || places.base(lap) + 3 * places.laps.pitch() > window.high();
        for (int i = 0; i < ranked.size() && !painted.isFull(); i++) {
            int slot = ranked.slot(i);
            if (way[slot] == wanted && (!cut || isInWindow(lap, relative[slot], ranked.residue(i)))) {
                painted.paint(first[slot] + ranked.from(i, phase[slot]), first[slot] + ranked.to(i, phase[slot]),
                        (int) (ranked.effort(i) + add));
            }
        }
    }

    private boolean isInWindow(long lap, long ofOffset, long residue) {
        long place = places.base(lap) + places.error(lap - ofOffset) + residue;
        return window.low() <= place && place <= window.high();
    }
}
