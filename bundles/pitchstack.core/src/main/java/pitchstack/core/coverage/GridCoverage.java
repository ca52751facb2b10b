// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.OptionalInt;

/**
 * How each position of a grid inside the travel is reached within a tolerance. Cells are numbered from 0, lowest
 * position first. Never changed.
 */
public final class GridCoverage {
    private final Grid grid;
    private final long tolerance;
    private final byte[] codes;

    GridCoverage(Grid grid, long tolerance, byte[] codes) {
        this.grid = grid;
        this.tolerance = tolerance;
        this.codes = codes;
    }

    /** From each position to the next, in counts. */
    public long step() {
        return grid.step();
    }

    /** The tolerance, itself included, in counts. */
    public long tolerance() {
        return tolerance;
    }

    /** How many positions of the grid lie in the travel. */
    public int cells() {
        return codes.length;
    }

    /** The position of a cell, in counts. */
    public long position(int cell) {
        return grid.position(cell);
    }

    /** How a cell is reached. */
    public Reached reached(int cell) {
        return Reached.of(codes[cell]);
    }

    /** The {@link Reached#code code} of a cell. */
    public byte code(int cell) {
        return codes[cell];
    }

    /** How many cells are reached in one way. */
    public int count(Reached reached) {
        int count = 0;
        for (byte code : codes) {
            count += code == reached.code() ? 1 : 0;
        }
        return count;
    }

    /** The first cell from one on that is reached in a way. */
    public OptionalInt next(int from, Reached reached) {
        for (int cell = from; cell < codes.length; cell++) {
            if (codes[cell] == reached.code()) {
                return OptionalInt.of(cell);
            }
        }
        return OptionalInt.empty();
    }
}
