// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import pitchstack.core.stack.Wear;

/**
 * Some stages that shift limits tie together, and every way to set them that keeps those limits, over teeth of any kind.
 * Setting s has the indices {@code index[i][s]} for the i-th of the stages, in the order of the indices, first stage first.
 */
final class Block {
    /** Marks a setting over barred teeth in {@link #worn}. */
    static final byte BARRED = -1;
    /** The most settings for which all moves from one place to them are worked out and kept. */
    private static final int MOST_TABLED = 4096;

    /** The stages, lowest first. */
    final StageTable[] stages;
    final int[][] index;
    /** By setting. */
    final long[] offset;
    /** By setting: how many of its stages stand over worn teeth, or {@link #BARRED}. */
    final byte[] worn;
    /** The component that these stages are, or null if other stages are tied to them, too. */
    final Component component;
    final MoveCache cache;

    /** Takes over arrays of one length. */
    Block(StageTable[] stages, int[][] index, long[] offset, byte[] worn, Component component) {
        this.stages = stages;
        this.index = index;
        this.offset = offset;
        this.worn = worn;
        this.component = component;
        this.cache = new MoveCache(this);
    }

    int size() {
        return offset.length;
    }

    /** Whether what it costs to move to each setting is worked out once for each place to start from. */
    boolean isTabled() {
        return component != null && size() <= MOST_TABLED;
    }

    /** The number of the setting with these indices, one a stage of the axis, or −1 if it is none. */
    int number(int[] indices) {
        int low = 0;
        int high = size() - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            int order = compare(middle, indices);
            if (order == 0) {
                return middle;
            }
            low = order < 0 ? middle + 1 : low;
            high = order < 0 ? high : middle - 1;
        }
        return -1;
    }

    private int compare(int setting, int[] indices) {
        for (int i = 0; i < stages.length; i++) {
            int there = indices[stages[i].stage];
            if (index[i][setting] != there) {
                return Integer.compare(index[i][setting], there);
            }
        }
        return 0;
    }

    /** Whether a setting is over teeth no worse than this. */
    boolean allows(int setting, Wear worst) {
        return worn[setting] == BARRED ? worst == Wear.BARRED : worn[setting] == 0 || worst != Wear.CLEAN;
    }

    /** Whether every setting is over teeth no worse than this. */
    boolean allowsAll(Wear worst) {
        for (int s = 0; s < size(); s++) {
            if (!allows(s, worst)) {
                return false;
            }
        }
        return true;
    }

    /** Copies the indices of a setting to their places among all stages of the axis. */
    void copyIndices(int setting, int[] indices) {
        for (int i = 0; i < stages.length; i++) {
            indices[stages[i].stage] = index[i][setting];
        }
    }
}
