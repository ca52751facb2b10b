// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Arrays;

/**
 * One lap among laps that all look alike, ready to be painted over and over on a grid. In lap after lap the grid stands
 * a little differently, so a copy of the lap is painted first and then each cell in which something changes is set
 * right: the change lies at or below the grid's position in the cell, or above it. No division is needed for that.
 */
final class Period {
    /** With more changes than this for each cell, looking up cell by cell is quicker. */
    private static final int MOST_CHANGES = 4;
    /** A copy of fewer cells is not worth its overhead. */
    private static final int FEWEST_CELLS = 16;

    private final long pitch;
    private final long step;
    private final Stretches lap;
    private final boolean copied;
    /** The cells of a lap whose first cell stands at its start, but for the cells in which something changes. */
    private final byte[] template;
    /** By change: the cell in which it lies, and how far into the cell. */
    private final int[] cell;
    private final long[] into;

    /**
     * @param lap how each residue in [0, pitch) is reached
     * @param pitch the length of a lap
     * @param step the step of the grid
     */
    Period(Stretches lap, long pitch, long step) {
        this.pitch = pitch;
        this.step = step;
        this.lap = lap;
        long cells = pitch / step + 1;
        this.copied = cells >= FEWEST_CELLS && cells <= Grid.MOST_CELLS && lap.size() <= MOST_CHANGES * cells;
        this.template = new byte[copied ? (int) cells : 0];
        this.cell = new int[copied ? lap.size() : 0];
        this.into = new long[cell.length];
        for (int i = 0; i < cell.length; i++) {
            cell[i] = (int) (lap.low(i) / step);
            into[i] = lap.low(i) % step;
        }
        for (int i = 0; i < cell.length; i++) {
            int end = i + 1 < cell.length ? cell[i + 1] + 1 : template.length;
            Arrays.fill(template, i == 0 ? 0 : Math.min(end, cell[i] + 1), end, lap.code(i));
        }
    }

    /**
     * Paints neighbouring cells.
     *
     * @param residue the residue of the first cell, in [0, pitch)
     */
    void paint(byte[] cells, int from, int to, long residue) {
        if (copied) {
            copy(cells, from, to, residue);
        } else {
            lookUp(cells, from, to, residue);
        }
    }

    private void copy(byte[] cells, int from, int to, long residue) {
        // The first cell of the first lap lies this many steps before the first cell painted.
        long before = residue / step;
        long start = from - before;
        long phase = residue - before * step;
        int whole = (int) (pitch / step);
        long rest = pitch % step;
        byte[] spare = new byte[template.length];
        while (start < to) {
            boolean inside = start >= from && start + template.length <= to;
            if (inside) {
                System.arraycopy(template, 0, cells, (int) start, template.length);
                setRight(cells, (int) start, phase);
            } else {
                System.arraycopy(template, 0, spare, 0, template.length);
                setRight(spare, 0, phase);
                int skipped = (int) Math.max(0, from - start);
                int end = (int) Math.min(template.length, to - start);
                if (skipped < end) {
                    System.arraycopy(spare, skipped, cells, (int) (start + skipped), end - skipped);
                }
            }
            boolean oneMore = rest > phase;
            start += whole + (oneMore ? 1 : 0);
            phase += (oneMore ? step : 0) - rest;
        }
    }

    /** The cell in which a change lies is past it if the change is no farther into the cell than the grid is. */
    private void setRight(byte[] cells, int start, long phase) {
        for (int i = 1; i < cell.length; i++) {
            int at = start + cell[i];
            // All ones where the cell is past the change.
            int mask = ~(int) (phase - into[i] >> Long.SIZE - 1);
            cells[at] ^= (cells[at] ^ lap.code(i)) & mask;
        }
    }

    private void lookUp(byte[] cells, int from, int to, long residue) {
        long at = residue;
        long advance = step % pitch;
        for (int i = from; i < to; i++) {
            cells[i] = lap.code(lap.at(at));
            at += advance;
            at -= at >= pitch ? pitch : 0;
        }
    }
}
