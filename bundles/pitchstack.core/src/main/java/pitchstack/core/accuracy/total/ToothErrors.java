// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.total;

import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.ToothSpan;

/**
 * What the errors of single teeth make of the way from index 0 to another. Where all flanks bear the position is the mean
 * over the engaged teeth of both rows, so teeth that are engaged at both ends of the way cancel, and over short ways most
 * are: the spread grows with the root of the way, until no base tooth is shared.
 */
final class ToothErrors {
    private static final int FLANKS = 2;

    private ToothErrors() {
    }

    /** The standard deviation of that way. Without rows that meet at 0, of the position at the index alone. */
    static double spreadM(StageAccuracy stage, int index) {
        RowPair rows = stage.rows();
        double base = variance(rows.engagedBase(index), rows.engagedBase(0), stage.base().neighbours());
        double rider = variance(rows.engagedRider(index), rows.engagedRider(0), stage.rider().neighbours());
        return Math.sqrt((base * stage.base().scatterM() * stage.base().scatterM()
                + rider * stage.rider().scatterM() * stage.rider().scatterM()) / FLANKS);
    }

    /** The variance of the difference of two means over teeth of variance 1 whose correlation fades by a part each tooth. */
    private static double variance(ToothSpan one, ToothSpan other, double neighbours) {
        int first = other.isEmpty() ? one.first() : Math.min(one.first(), other.first());
        int last = other.isEmpty() ? one.last() : Math.max(one.last(), other.last());
        double sum = 0;
        // Σ over earlier teeth of weight times fading correlation, carried from tooth to tooth.
        double carried = 0;
        for (int tooth = first; tooth <= last; tooth++) {
            double weight = weight(one, tooth) - weight(other, tooth);
            sum += weight * weight + 2 * weight * neighbours * carried;
            carried = neighbours * carried + weight;
        }
        return Math.max(0, sum);
    }

    private static double weight(ToothSpan span, int tooth) {
        return span.first() <= tooth && tooth <= span.last() ? 1.0 / span.count() : 0;
    }
}
