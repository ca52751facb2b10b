// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import java.util.List;
import pitchstack.core.stack.WornRange;
import pitchstack.ui.views.coverage.strip.Sight;

/**
 * What the bars of one row are drawn from.
 *
 * @param title what stands above them
 * @param counts by tooth, how often it is seated in one run; at least one tooth
 * @param times how many runs
 * @param marks the marked teeth of the row
 * @param sight the teeth in sight; tooth n takes the place from n to n + 1
 */
record Bars(String title, int[] counts, int times, List<WornRange> marks, Sight sight) {
    /** At the closest zoom so many teeth are in sight, where there are as many. */
    private static final int LEAST_TEETH = 12;

    /** All teeth of a row. */
    static Bars all(String title, int[] counts, int times, List<WornRange> marks) {
        return new Bars(title, counts, times, marks,
                Sight.all(0, counts.length, Math.min(LEAST_TEETH, counts.length)));
    }

    Bars look(Sight at) {
        return new Bars(title, counts, times, marks, at);
    }

    /** The most seatings of any tooth in one run. */
    int most() {
        return most(0, counts.length - 1);
    }

    /** The most seatings of some teeth in one run; teeth outside the row count as none. */
    int most(int first, int last) {
        int most = 0;
        for (int tooth = Math.max(0, first); tooth <= Math.min(counts.length - 1, last); tooth++) {
            most = Math.max(most, counts[tooth]);
        }
        return most;
    }

    /** The tooth most used, the first of equals. */
    int mostUsed() {
        int best = 0;
        for (int tooth = 1; tooth < counts.length; tooth++) {
            best = counts[tooth] > counts[best] ? tooth : best;
        }
        return best;
    }
}
