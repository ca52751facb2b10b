// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.ToothSpan;

/** A mark must lie on teeth that exist; the planner passes over the others. */
public final class WornOutsideRow implements RowCheck {
    @Override
    public List<Finding> at(RowSpec row, int j, Place.Part part, String which) {
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < row.worn().size() && row.teeth() > 0; i++) {
            ToothSpan marked = row.worn().get(i).teeth();
            String value = "teeth " + marked.first() + " to " + marked.last();
            String limit = "teeth 0 to " + (row.teeth() - 1);
            if (marked.isEmpty()) {
                findings.add(new Finding("worn-outside-row", Severity.WARNING, Place.worn(j, part, i), value, limit,
                        "A mark on the " + which + " runs over " + value
                                + " and so covers none; swap the two or delete it."));
            } else if (!row.span().contains(marked)) {
                findings.add(new Finding("worn-outside-row", Severity.WARNING, Place.worn(j, part, i), value, limit,
                        "A mark covers " + value + ", but the " + which + " has only " + limit
                                + "; shorten the mark or lengthen the row."));
            }
        }
        return findings;
    }
}
