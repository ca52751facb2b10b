// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.total;

import pitchstack.core.accuracy.material.Expansion;

/**
 * How well a row is made.
 *
 * @param length what is known of its length
 * @param scatterM standard deviation of a flank from where the row's own pitch puts it, at least 0
 * @param neighbours correlation of the errors of neighbouring teeth, from 0 to 1, fading by this part with every tooth
 * @param expansion of its material
 */
public record RowAccuracy(RowLength length, double scatterM, double neighbours, Expansion expansion) {
    /** Checks the numbers. */
    public RowAccuracy {
        if (!(scatterM >= 0 && neighbours >= 0 && neighbours <= 1)) {
            throw new IllegalArgumentException("Scatter is at least 0 and a correlation from 0 to 1, not " + scatterM
                    + " and " + neighbours);
        }
    }
}
