// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.function.Consumer;

/**
 * What neighbouring groups of offsets look like in a lap, with what the lap of each adds to the effort. Those of 1, 2, 4,
 * … neighbouring groups are kept once worked out; any range is painted from few of them. For one thread.
 */
final class EffortPatterns {
    private final Laps laps;
    private final long tolerance;
    private final long step;
    private final long perLap;
    /** By level and place: the pattern of groups {@code [place << level, (place + 1) << level)}. */
    private final EffortPieces[][] pieces;
    private final EffortBrush[][] brushes;
    private EffortBrush all;

    /**
     * @param tolerance itself included
     * @param step the step of the grid
     * @param perLap what each lap adds to the effort of its offsets
     */
    EffortPatterns(Laps laps, long tolerance, long step, long perLap) {
        this.laps = laps;
        this.tolerance = tolerance;
        this.step = step;
        this.perLap = perLap;
        int levels = 1;
        while (1L << levels - 1 < laps.groups()) {
            levels++;
        }
        this.pieces = new EffortPieces[levels][];
        this.brushes = new EffortBrush[levels][];
        for (int level = 0; level < levels; level++) {
            pieces[level] = new EffortPieces[(laps.groups() - 1 >> level) + 1];
            brushes[level] = new EffortBrush[pieces[level].length];
        }
    }

    long tolerance() {
        return tolerance;
    }

    /** What each lap adds to the effort of its offsets. */
    long perLap() {
        return perLap;
    }

    /** The pattern of all groups. */
    EffortBrush all() {
        all = all == null ? brush(pieces.length - 1, 0) : all;
        return all;
    }

    /** The patterns that together are those of the groups from one up to but not including another. */
    void range(int from, int to, Consumer<EffortBrush> use) {
        int low = from;
        int high = to;
        for (int level = 0; low < high; level++) {
            if ((low & 1) == 1) {
                use.accept(brush(level, low++));
            }
            if ((high & 1) == 1) {
                use.accept(brush(level, --high));
            }
            low >>= 1;
            high >>= 1;
        }
    }

    private EffortBrush brush(int level, int place) {
        if (brushes[level][place] == null) {
            brushes[level][place] = new EffortBrush(pieces(level, place), -tolerance, step);
        }
        return brushes[level][place];
    }

    private EffortPieces pieces(int level, int place) {
        if (pieces[level][place] == null) {
            pieces[level][place] = level == 0 ? group(place) : both(level, place);
        }
        return pieces[level][place];
    }

    private EffortPieces group(int group) {
        return EffortPieces.around(laps, group, 0, laps.pitch() - 1, tolerance)
                .least(perLap * laps.lap(group), EffortPieces.none(), 0);
    }

    private EffortPieces both(int level, int place) {
        EffortPieces low = pieces(level - 1, 2 * place);
        return 2 * place + 1 < pieces[level - 1].length ? low.least(0, pieces(level - 1, 2 * place + 1), 0) : low;
    }
}
