// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import java.util.Optional;
import pitchstack.model.Row;
import pitchstack.model.WearKind;

/** Which marks make sense. */
public final class MarkRules {
    private MarkRules() {
    }

    /**
     * Why teeth cannot be marked, whatever else is marked.
     *
     * @return one sentence with the numbers and the way out; empty where they can
     */
    public static Optional<String> refusal(ToothMark mark) {
        Row row = mark.row();
        if (row.getTeeth() < 1) {
            return Optional.of("The " + ToothMark.words(row) + " has no teeth to mark.");
        }
        int outside = mark.first() < 0 || mark.first() >= row.getTeeth() ? mark.first() : mark.last();
        if (outside < 0 || outside >= row.getTeeth()) {
            return Optional.of("Tooth " + outside + " is out of the row: the " + ToothMark.words(row) + " has teeth 0 to "
                    + (row.getTeeth() - 1) + ".");
        }
        return mark.last() < mark.first() ? Optional.of("The last tooth, " + mark.last() + ", lies before the first, "
                + mark.first() + "; swap the two.") : Optional.empty();
    }

    /**
     * Why a mark cannot stand beside others.
     *
     * @param mark the mark
     * @param others marks of any rows, without this one
     */
    public static Optional<String> refusal(ToothMark mark, List<ToothMark> others) {
        return refusal(mark).or(() -> others.stream().filter(other -> meet(mark, other)).findFirst()
                .map(other -> sentence("marked", other)));
    }

    /**
     * Why marks cannot be supposed: over teeth of another supposed mark, and where the file marks them as badly already.
     *
     * @param mark the supposed mark
     * @param supposed the other supposed marks
     */
    public static Optional<String> refusalToSuppose(ToothMark mark, List<ToothMark> supposed) {
        return refusal(mark).or(() -> supposed.stream().filter(other -> meet(mark, other)).findFirst()
                .map(other -> sentence("supposed", other)))
                .or(() -> ToothMark.all(mark.row()).stream().filter(other -> meet(mark, other)
                        && (other.kind() == WearKind.BARRED || mark.kind() == WearKind.WORN)).findFirst()
                        .map(other -> sentence("marked", other)));
    }

    static boolean meet(ToothMark one, ToothMark other) {
        return one.row() == other.row() && one.span().meets(other.span());
    }

    private static String sentence(String how, ToothMark other) {
        String teeth = other.teeth();
        return Character.toUpperCase(teeth.charAt(0)) + teeth.substring(1) + " of the " + ToothMark.words(other.row())
                + (other.first() == other.last() ? " is already " : " are already ") + how + " "
                + (how.equals("supposed") ? "to be " : "as ") + other.kind().getLiteral()
                + "; change that range, or name other teeth.";
    }
}
