// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.emf.ecore.EObject;
import pitchstack.core.stack.RowPair;
import pitchstack.edit.MoveStage;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.model.Stage;
import pitchstack.ui.editor.parts.Elements;
import pitchstack.ui.editor.places.StageTravel;

/** Moves the selected stage to index 0, if it may stand there. */
public final class ZeroIndexHandler extends StageHandler {
    @Override
    boolean applies(EObject element) {
        return Elements.stage(element).filter(stage -> stage.getIndex() != 0 && canStandAtZero(stage)).isPresent();
    }

    private static boolean canStandAtZero(Stage stage) {
        return Session.of(stage).filter(session -> new StageTravel(rows(session, stage)).usable(0)).isPresent();
    }

    private static RowPair rows(Session session, Stage stage) {
        return session.analysis((Axis) stage.eContainer()).spec().stages().get(Elements.number(stage)).rows();
    }

    @Override
    void run(ExecutionEvent event, Session session, EObject element) {
        session.run(new MoveStage(Elements.stage(element).orElseThrow(), 0));
    }
}
