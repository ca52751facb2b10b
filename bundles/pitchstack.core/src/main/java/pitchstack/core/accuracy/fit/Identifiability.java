// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.RealMatrix;

/**
 * What a run can tell of the stages, whatever its readings: it follows from the settings alone.
 *
 * @param unmoved stages that stood at one index throughout
 * @param tied groups of stages that the run cannot tell apart, such as two that always moved together; a stage alone in
 *     a group cannot be told from the datum or the reversal
 */
public record Identifiability(List<Integer> unmoved, List<List<Integer>> tied) {
    /** Entries of the projection below this are rounding. */
    private static final double ROUNDING = 1e-6;

    /** Copies the lists. */
    public Identifiability {
        unmoved = List.copyOf(unmoved);
        tied = tied.stream().map(List::copyOf).toList();
    }

    /**
     * What a run can tell.
     *
     * @param readings at least one
     */
    public static Identifiability of(List<StageScale> stages, List<Reading> readings) {
        RealMatrix undetermined = Design.of(stages, readings).problem(readings).undetermined();
        List<Integer> unmoved = new ArrayList<>();
        List<List<Integer>> tied = new ArrayList<>();
        boolean[] seen = new boolean[stages.size()];
        for (int j = 0; j < stages.size(); j++) {
            if (!seen[j] && undetermined.getEntry(Design.column(j), Design.column(j)) > ROUNDING) {
                List<Integer> group = new ArrayList<>();
                collect(j, undetermined, seen, group);
                sort(group, readings, unmoved, tied);
            }
        }
        return new Identifiability(unmoved, tied);
    }

    private static void collect(int from, RealMatrix undetermined, boolean[] seen, List<Integer> group) {
        seen[from] = true;
        group.add(from);
        for (int other = 0; other < seen.length; other++) {
            if (!seen[other] && Math.abs(undetermined.getEntry(Design.column(from), Design.column(other))) > ROUNDING) {
                collect(other, undetermined, seen, group);
            }
        }
    }

    /** Stages that never moved may hang together through the datum; each is named by itself. */
    private static void sort(List<Integer> group, List<Reading> readings, List<Integer> unmoved, List<List<Integer>> tied) {
        List<Integer> moved = new ArrayList<>();
        for (int stage : group) {
            boolean stood = readings.stream().mapToInt(r -> r.setting().index(stage)).distinct().count() == 1;
            (stood ? unmoved : moved).add(stage);
        }
        if (!moved.isEmpty()) {
            tied.add(moved);
        }
    }

    /** Whether the run tells every stage. */
    public boolean isComplete() {
        return unmoved.isEmpty() && tied.isEmpty();
    }
}
