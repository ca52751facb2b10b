// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import pitchstack.core.stack.ToothSpan;

/**
 * How often each tooth of one row is seated.
 *
 * @param stage the stage, counted from the lowest, 0
 * @param row which of its rows
 * @param counts by tooth, how often it is seated
 */
public record RowSeatings(int stage, WearMark.Row row, int[] counts) {
    /** The largest count. */
    public int most() {
        return Arrays.stream(counts).max().orElse(0);
    }

    /** How many teeth have a count. */
    public int teeth(int count) {
        return (int) Arrays.stream(counts).filter(one -> one == count).count();
    }

    /**
     * The most used teeth in words: {@code 36 to 47, 60 and others}.
     *
     * @param mostSpans how many stretches of neighbours are named before the others are only mentioned
     * @return empty where none is used
     */
    public String mostUsed(int mostSpans) {
        if (most() == 0) {
            return "";
        }
        List<String> spans = spans(most()).stream()
                .map(span -> span.count() == 1 ? "" + span.first() : span.first() + " to " + span.last()).toList();
        return spans.size() <= mostSpans ? String.join(", ", spans)
                : String.join(", ", spans.subList(0, mostSpans)) + " and others";
    }

    /** The teeth with a count, as stretches of neighbours. */
    private List<ToothSpan> spans(int count) {
        List<ToothSpan> spans = new ArrayList<>();
        int first = -1;
        for (int tooth = 0; tooth <= counts.length; tooth++) {
            boolean has = tooth < counts.length && counts[tooth] == count;
            if (has && first < 0) {
                first = tooth;
            } else if (!has && first >= 0) {
                spans.add(new ToothSpan(first, tooth - 1));
                first = -1;
            }
        }
        return spans;
    }
}
