// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.OptionalLong;
import pitchstack.core.stack.AxisSpec;

/**
 * The settings of all stages but the one of most indices. Together they must fill one pitch of that stage with
 * positions, or the travel where it is shorter, so their number bounds the finest step that is the same everywhere.
 *
 * @param coarse the stage of most indices, counted from the lowest, 0
 * @param count how many ways the shift limits among them and barred teeth leave to set the others; empty where there
 *     are more than {@value #MOST_COUNTED}
 * @param stretch the length to fill, in counts; 0 where the axis has no travel
 */
public record FineSettings(int coarse, OptionalLong count, long stretch) {
    /** Enough for a step of 40 nm on a 5 mm rack, so that no one needs to count further. */
    static final int MOST_COUNTED = 1 << 17;

    /**
     * Counts the fine settings.
     *
     * @param axis a sound axis; see {@link Soundness}
     */
    public static FineSettings of(AxisSpec axis) {
        return new Preparation(axis, MOST_COUNTED, KeySearch.LEAST_GAIN).fineSettings();
    }
}
