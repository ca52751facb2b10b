// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.ToothSpan;

/** Two marks over the same teeth: the worse one counts, so that deleting the other changes nothing. */
public final class MarksOverlap implements RowCheck {
    /** One finding for each mark that begins inside an earlier one, by first tooth; not one for each pair. */
    @Override
    public List<Finding> at(RowSpec row, int j, Place.Part part, String which) {
        List<Finding> findings = new ArrayList<>();
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
        return findings;
    }
}
