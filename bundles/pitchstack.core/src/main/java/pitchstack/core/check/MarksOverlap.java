// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;

/** Two marks over the same teeth: the worse one counts, so that deleting the other changes nothing. */
public final class MarksOverlap implements Check {
    @Override
    public List<Finding> apply(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        for (int j = 0; j < subject.axis().stages().size(); j++) {
            StageSpec stage = subject.axis().stages().get(j);
            look(findings, j, Place.Part.BASE_ROW, "base row of stage " + stage.title(j), stage.rows().base());
            look(findings, j, Place.Part.RIDER_ROW, "rider row of stage " + stage.title(j), stage.rows().rider());
        }
        return findings;
    }

    /** One finding for each mark that begins inside an earlier one, by first tooth; not one for each pair. */
    private static void look(List<Finding> findings, int j, Place.Part part, String which, RowSpec row) {
        List<Integer> byStart = IntStream.range(0, row.worn().size()).boxed()
                .filter(i -> !row.worn().get(i).teeth().isEmpty())
                .sorted(Comparator.comparingInt(i -> row.worn().get(i).teeth().first())).toList();
        ToothSpan farthest = null;
        for (int i : byStart) {
            ToothSpan marked = row.worn().get(i).teeth();
            if (farthest != null && marked.first() <= farthest.last()) {
                String value = "teeth " + marked.first() + " to " + Math.min(marked.last(), farthest.last());
                findings.add(new Finding("marks-overlap", Severity.NOTE, Place.worn(j, part, i), value, "one mark a tooth",
                        "On the " + which + " " + value + " are marked twice; the worse mark counts, so shorten one or"
                                + " delete it."));
            }
            farthest = farthest == null || marked.last() > farthest.last() ? marked : farthest;
        }
    }
}
