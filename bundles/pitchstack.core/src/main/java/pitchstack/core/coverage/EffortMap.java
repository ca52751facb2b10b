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

    private final Grid grid;
    private final long tolerance;
    private final int[] clean;
    private final int[] usable;

    EffortMap(Grid grid, long tolerance, int[] clean, int[] usable) {
        this.grid = grid;
        this.tolerance = tolerance;
        this.clean = clean;
        this.usable = usable;
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
        return clean.length;
    }

    /** The position of a cell, in counts. */
    public long position(int cell) {
        return grid.position(cell);
    }

    /** How a cell is reached. */
    public Reached reached(int cell) {
        return clean[cell] != NONE ? Reached.CLEAN : usable[cell] != NONE ? Reached.WORN : Reached.NOT;
    }

    /** The least effort of a cell in milliseconds; empty where it is not reached. */
    public OptionalLong effortMs(int cell) {
        int effort = Math.min(clean[cell], clean[cell] == NONE ? usable[cell] : NONE);
        return effort == NONE ? OptionalLong.empty() : OptionalLong.of(effort);
    }
}
