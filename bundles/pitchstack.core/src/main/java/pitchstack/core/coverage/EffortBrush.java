// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

/**
 * Pieces of effort made ready for a grid, to be painted lap after lap without a division. Never changed.
 */
final class EffortBrush {
    private final EffortPieces pieces;
    /** By piece: how many steps it starts above the lowest residue, and how far beyond that. */
    private final long[] steps;
    private final long[] beyond;

    /**
     * @param pieces the pieces
     * @param lowest a residue no higher than any piece
     * @param step the step of the grid
     */
    EffortBrush(EffortPieces pieces, long lowest, long step) {
        this.pieces = pieces;
        this.steps = new long[pieces.size()];
        this.beyond = new long[pieces.size()];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = (pieces.start(i) - lowest) / step;
            beyond[i] = (pieces.start(i) - lowest) % step;
        }
    }

    /**
     * Paints a lap where it undercuts what is there.
     *
     * @param cells the efforts of all cells
     * @param first the cell at or above the lowest residue, which may lie before the first of all
     * @param phase how far above it that cell lies, less than a step
     * @param add what to add to every effort
     */
    void paint(int[] cells, long first, long phase, long add) {
        int to = steps.length == 0 ? 0 : clamp(cells, first, phase, 0);
        for (int i = 0; i + 1 < steps.length; i++) {
            int from = to;
            to = clamp(cells, first, phase, i + 1);
            if (pieces.effort(i) != EffortPieces.NONE) {
                undercut(cells, from, to, (int) (pieces.effort(i) + add));
            }
        }
    }

    private int clamp(int[] cells, long first, long phase, int piece) {
        long cell = first + steps[piece] + (beyond[piece] > phase ? 1 : 0);
        return (int) Math.max(0, Math.min(cells.length, cell));
    }

    static void undercut(int[] cells, int from, int to, int effort) {
        for (int i = from; i < to; i++) {
            cells[i] = Math.min(cells[i], effort);
        }
    }
}
