// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.OptionalLong;

/**
 * The least effort with which each position of a grid inside the travel is reached from one setting within a
 * tolerance: over clean teeth where it can be reached so, else over worn ones. Cells are numbered from 0, lowest
 * position first. Never changed.
 */
public final class EffortMap {
    /** The effort where a cell is not reached. */
    static final int NONE = Integer.MAX_VALUE;
    /** Added to the effort of what is over worn teeth, so that the least of all is over clean ones where it can be. */
    static final int WORN = 1 << 30;

    private final Grid grid;
    private final long tolerance;
    private final int[] efforts;

    /**
     * @param efforts by cell; those over worn teeth with {@link #WORN} added, {@link #NONE} where there is none
     */
    EffortMap(Grid grid, long tolerance, int[] efforts) {
        this.grid = grid;
        this.tolerance = tolerance;
        this.efforts = efforts;
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
        return efforts.length;
    }

    /** The position of a cell, in counts. */
    public long position(int cell) {
        return grid.position(cell);
    }

    /** How a cell is reached. */
    public Reached reached(int cell) {
        return efforts[cell] < WORN ? Reached.CLEAN : efforts[cell] < NONE ? Reached.WORN : Reached.NOT;
    }

    /** The least effort of a cell in milliseconds; empty where it is not reached. */
    public OptionalLong effortMs(int cell) {
        return efforts[cell] == NONE ? OptionalLong.empty() : OptionalLong.of(efforts[cell] & WORN - 1);
    }
}
