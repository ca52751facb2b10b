// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.util.EcoreUtil;
import pitchstack.core.stack.ToothSpan;
import pitchstack.model.WornRange;

/**
 * Marks teeth of rows. What is marked counts instead of what was marked there before: older ranges keep only their other
 * teeth.
 *
 * @param marks the marks, on rows of one document
 */
public record MarkTeeth(List<ToothMark> marks) implements Edit {
    /** Copies the list; refuses marks that do not make sense by themselves. */
    public MarkTeeth {
        marks = List.copyOf(marks);
        marks.forEach(mark -> MarkRules.refusal(mark).ifPresent(why -> {
            throw new IllegalArgumentException(why);
        }));
    }

    /** Marks some teeth of one row. */
    public MarkTeeth(ToothMark mark) {
        this(List.of(mark));
    }

    @Override
    public String label() {
        return marks.size() == 1 ? "Mark " + marks.get(0).teeth() + " as " + marks.get(0).kind().getLiteral()
                : "Mark " + marks.size() + " ranges of teeth";
    }

    @Override
    public void apply() {
        for (ToothMark mark : marks) {
            EList<WornRange> worn = mark.row().getWorn();
            for (WornRange old : List.copyOf(worn)) {
                cut(worn, old, mark.span());
            }
            worn.add(mark.range());
        }
    }

    /** Takes teeth out of a range: it keeps those below, or else those above, and a copy keeps the rest. */
    private static void cut(EList<WornRange> worn, WornRange old, ToothSpan out) {
        ToothSpan had = new ToothSpan(old.getFirst(), old.getLast());
        if (!had.meets(out)) {
            return;
        }
        ToothSpan below = new ToothSpan(had.first(), Math.min(had.last(), out.first() - 1));
        ToothSpan above = new ToothSpan(Math.max(had.first(), out.last() + 1), had.last());
        if (below.isEmpty() && above.isEmpty()) {
            worn.remove(old);
        } else if (below.isEmpty()) {
            old.setFirst(above.first());
        } else {
            if (!above.isEmpty()) {
                WornRange rest = EcoreUtil.copy(old);
                rest.setFirst(above.first());
                worn.add(worn.indexOf(old) + 1, rest);
            }
            old.setLast(below.last());
        }
    }
}
