// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import org.eclipse.emf.ecore.util.EcoreUtil;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.model.PitchstackPackage.Literals;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.WornRange;

/**
 * Lengthens or shortens a row at its ends. Every tooth that stays keeps its mate: where teeth are added or cut at the
 * start, the start tooth and the marks of the row are counted anew. Marks on teeth that are cut go with them.
 *
 * @param row a row of a stage
 * @param atStart teeth added before tooth 0, below 0 to cut some
 * @param atEnd teeth added behind the last, below 0 to cut some
 */
public record ResizeRow(Row row, int atStart, int atEnd) implements Edit {
    /** Refuses to leave no tooth, or more than a row may have. */
    public ResizeRow {
        int teeth = row.getTeeth() + atStart + atEnd;
        if (teeth < 1 || teeth > Properties.MOST_TEETH) {
            throw new IllegalArgumentException("A row of " + teeth + " teeth");
        }
    }

    /** The nearest number of teeth that can be added to a row, for one that is wanted. */
    public static int allowed(Row row, int wanted) {
        return Math.max(1 - row.getTeeth(), Math.min(Properties.MOST_TEETH - row.getTeeth(), wanted));
    }

    private boolean isBase() {
        return row.eContainmentFeature() == Literals.STAGE__BASE_ROW;
    }

    @Override
    public String label() {
        String which = (isBase() ? "base row of “" : "rider row of “") + ((Stage) row.eContainer()).getName() + "”";
        return (atStart + atEnd < 0 ? "Shorten " : "Lengthen ") + which + " by " + Math.abs(atStart + atEnd)
                + (Math.abs(atStart + atEnd) == 1 ? " tooth" : " teeth");
    }

    /** What the rows of the stage come to, without changing the document; marks that are cut off lie beside the row. */
    public RowPair preview(RowPair now) {
        RowSpec before = isBase() ? now.base() : now.rider();
        RowSpec changed = new RowSpec(before.teeth() + atStart + atEnd, before.worn().stream()
                .map(mark -> new pitchstack.core.stack.WornRange(mark.teeth().shift(atStart), mark.wear())).toList());
        return new RowPair(isBase() ? changed : now.base(), isBase() ? now.rider() : changed, now.start() + startMoves(),
                now.minimumEngaged());
    }

    private int startMoves() {
        return isBase() ? atStart : -atStart;
    }

    @Override
    public void apply() {
        Stage stage = (Stage) row.eContainer();
        row.setTeeth(row.getTeeth() + atStart + atEnd);
        stage.setStart(stage.getStart() + startMoves());
        for (WornRange range : List.copyOf(row.getWorn())) {
            int first = Math.max(0, range.getFirst() + atStart);
            int last = Math.min(row.getTeeth() - 1, range.getLast() + atStart);
            if (first > last) {
                EcoreUtil.remove(range);
            } else {
                range.setFirst(first);
                range.setLast(last);
            }
        }
    }
}
