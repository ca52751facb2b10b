// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.ToothSpan;
import pitchstack.edit.MarkRules;
import pitchstack.edit.MarkTeeth;
import pitchstack.edit.Session;
import pitchstack.edit.ToothMark;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.WearKind;
import pitchstack.model.WornRange;
import pitchstack.ui.editor.StackEditor;
import pitchstack.ui.editor.parts.Elements;

/**
 * Asks for teeth of the selected row, or of a row of the selected stage, and marks them. It begins with the tooth that
 * was pressed, or else with those that are engaged.
 */
public final class MarkTeethHandler extends StageHandler {
    @Override
    boolean applies(EObject element) {
        return Elements.stage(element)
                .filter(stage -> stage.getBaseRow() != null && stage.getRiderRow() != null).isPresent();
    }

    @Override
    void run(ExecutionEvent event, Session session, EObject element) {
        Stage stage = Elements.stage(element).orElseThrow();
        Row row = Elements.row(element).orElse(stage.getBaseRow());
        if (element instanceof WornRange range) {
            ask(HandlerUtil.getActiveShell(event), session, ToothMark.of(range));
            return;
        }
        OptionalInt tooth = HandlerUtil.getActivePart(event) instanceof StackEditor editor
                ? editor.page().pressedTooth(row) : OptionalInt.empty();
        ToothSpan teeth = tooth.isPresent() ? new ToothSpan(tooth.getAsInt(), tooth.getAsInt()) : engaged(session, stage, row);
        int before = row.getWorn().size();
        ask(HandlerUtil.getActiveShell(event), session,
                new ToothMark(row, teeth.first(), teeth.last(), WearKind.WORN, ""));
        if (row.getWorn().size() > before) {
            select(event, row.getWorn().get(row.getWorn().size() - 1));
        }
    }

    private static ToothSpan engaged(Session session, Stage stage, Row row) {
        RowPair rows = session.analysis().spec().stages().get(Elements.number(stage)).rows();
        int index = session.shown().index(Elements.number(stage));
        ToothSpan teeth = row == stage.getBaseRow() ? rows.engagedBase(index) : rows.engagedRider(index);
        return teeth.isEmpty() ? new ToothSpan(0, 0) : teeth;
    }

    /**
     * Asks, and marks what was asked for as one change, or supposes it; does nothing on a stage that lacks a row.
     *
     * @param mark what to begin with
     */
    public static void ask(Shell shell, Session session, ToothMark mark) {
        if (ToothMark.rows(mark.stage()).size() < 2) {
            return;
        }
        MarkTeethDialog dialog = new MarkTeethDialog(shell, mark,
                wanted -> MarkRules.refusalToSuppose(wanted, session.supposed()));
        int answer = dialog.open();
        if (answer == Window.OK) {
            session.run(new MarkTeeth(dialog.mark()));
        } else if (answer == MarkTeethDialog.SUPPOSE) {
            List<ToothMark> supposed = new ArrayList<>(session.supposed());
            supposed.add(dialog.mark());
            session.suppose(supposed);
        }
    }
}
