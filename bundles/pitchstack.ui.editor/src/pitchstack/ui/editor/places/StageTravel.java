// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.places;

import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.Wear;

/**
 * Where a stage may be put by hand: any index of its range that is not barred. Barred indices are passed over, since a
 * stage is lifted past them.
 *
 * @param rows the two rows of the stage
 */
public record StageTravel(RowPair rows) {
    /** Whether the stage may stand at an index. */
    public boolean usable(int index) {
        return rows.indices().contains(index) && rows.wearAt(index) != Wear.BARRED;
    }

    /**
     * The usable index for one that a hand points at: the same if it can be used, else the next beyond it in the
     * direction of the movement, else the last usable one before it.
     *
     * @param from where the movement began; the answer where nothing can be used
     * @param wanted the index pointed at, in range or not
     */
    public int settle(int from, int wanted) {
        IndexRange range = rows.indices();
        if (range.isEmpty() || wanted == from) {
            return from;
        }
        int direction = wanted > from ? 1 : -1;
        int pointed = range.clamp(wanted);
        for (int index = pointed; range.contains(index); index += direction) {
            if (usable(index)) {
                return index;
            }
        }
        for (int index = pointed; range.contains(index) && index != from; index -= direction) {
            if (usable(index)) {
                return index;
            }
        }
        return from;
    }
}
