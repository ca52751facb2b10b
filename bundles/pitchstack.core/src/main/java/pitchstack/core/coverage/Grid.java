// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Arrays;

/**
 * The positions of a grid that lie in some spans, numbered as cells without a hole: span after span, lowest first.
 * Never changed.
 */
final class Grid {
    /** The most cells: 128 MB as bytes. */
    static final int MOST_CELLS = 1 << 27;

    private final long origin;
    private final long step;
    /** By span, the first multiple of the step in it, and the number of its first cell; one more number for the end. */
    private final long[] firstMultiple;
    private final int[] firstCell;

    /**
     * The cells of a grid.
     *
     * @param origin any position of the grid
     * @param step from each position to the next, at least 1
     * @param travel where cells are wanted
     * @param most the most cells
     * @throws TooMuch if there are too many
     */
    Grid(long origin, long step, Spans travel, int most) {
        this.origin = Math.floorMod(origin, step);
        this.step = step;
        this.firstMultiple = new long[travel.size()];
        this.firstCell = new int[travel.size() + 1];
        for (int i = 0; i < travel.size(); i++) {
            firstMultiple[i] = multipleFrom(travel.first(i));
            long cells = multipleFrom(travel.last(i) + 1) - firstMultiple[i];
            if (firstCell[i] + cells > most) {
                throw new TooMuch();
            }
            firstCell[i + 1] = firstCell[i] + (int) cells;
        }
    }

    /** The smallest step with which a travel has no more cells than may be. */
    static long smallestStep(Spans travel, int most) {
        long length = 0;
        for (int i = 0; i < travel.size(); i++) {
            length += travel.last(i) - travel.first(i) + 1;
        }
        return length / (most - travel.size() - 1) + 1;
    }

    int cells() {
        return firstCell[firstCell.length - 1];
    }

    long step() {
        return step;
    }

    private int spans() {
        return firstMultiple.length;
    }

    /** The smallest multiple of the step that is, from the origin, at or above a position. */
    private long multipleFrom(long position) {
        return -Math.floorDiv(origin - position, step);
    }

    /** The first cell of a span at or above a position, or the first of the next span. */
    int cellFrom(int span, long position) {
        long cell = firstCell[span] + multipleFrom(position) - firstMultiple[span];
        return (int) Math.max(firstCell[span], Math.min(firstCell[span + 1], cell));
    }

    /** The number that a cell of a single span would have at or above a position, if the span went on for ever. */
    long cellNumber(long position) {
        return multipleFrom(position) - firstMultiple[0];
    }

    /** The position that goes with it. */
    long positionOf(long cellNumber) {
        return origin + (firstMultiple[0] + cellNumber) * step;
    }

    /** Lowers every cell in some spans to an effort. */
    void undercut(int[] cells, Spans some, int effort) {
        for (int i = 0; i < some.size(); i++) {
            for (int span = 0; span < spans(); span++) {
                EffortBrush.undercut(cells, cellFrom(span, some.first(i)), cellFrom(span, some.last(i) + 1), effort);
            }
        }
    }

    long position(int cell) {
        int found = Arrays.binarySearch(firstCell, 0, spans(), cell);
        int span = found < 0 ? -found - 2 : found;
        // Of spans that begin with the same cell all but the last are empty.
        while (span + 1 < spans() && firstCell[span + 1] <= cell) {
            span++;
        }
        return origin + (firstMultiple[span] + cell - firstCell[span]) * step;
    }

    /** The codes of all cells. */
    byte[] paint(Spans usable, Spans clean) {
        byte[] cells = new byte[cells()];
        Arrays.fill(cells, Reached.NOT.code());
        for (int span = 0; span < spans(); span++) {
            paint(cells, span, firstCell[span], firstCell[span + 1], usable, Reached.WORN.code());
            paint(cells, span, firstCell[span], firstCell[span + 1], clean, Reached.CLEAN.code());
        }
        return cells;
    }

    /** Marks every cell of a span that lies in some spans and between two cells. */
    void paint(byte[] cells, int span, int fromCell, int toCell, Spans some, byte code) {
        if (fromCell >= toCell) {
            return;
        }
        for (int i = some.endingFrom(position(fromCell)); i < some.size(); i++) {
            int from = Math.max(fromCell, cellFrom(span, some.first(i)));
            int to = Math.min(toCell, cellFrom(span, some.last(i) + 1));
            if (from >= toCell) {
                return;
            }
            if (from < to) {
                Arrays.fill(cells, from, to, code);
            }
        }
    }
}
