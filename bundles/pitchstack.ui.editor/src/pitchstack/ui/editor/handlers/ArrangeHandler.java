// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import java.util.List;
import java.util.Optional;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.emf.ecore.EObject;
import pitchstack.edit.Edit;
import pitchstack.edit.PasteStages;
import pitchstack.edit.ReorderStage;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.model.Stage;
import pitchstack.ui.editor.parts.Elements;

/** Moves the selected stage up or down in its stack, or duplicates it, as the command says. */
public final class ArrangeHandler extends StageHandler {
    @Override
    boolean applies(EObject element) {
        return Elements.stage(element).isPresent();
    }

    @Override
    void run(ExecutionEvent event, Session session, EObject element) {
        Stage stage = Elements.stage(element).orElseThrow();
        switch (event.getCommand().getId()) {
            case "pitchstack.ui.editor.duplicate" -> {
                PasteStages copy = PasteStages.duplicate(stage);
                session.run(copy);
                select(event, copy.stages().get(0));
            }
            case "pitchstack.ui.editor.stageUp" -> move(event, session, stage, 1);
            default -> move(event, session, stage, -1);
        }
    }

    private static void move(ExecutionEvent event, Session session, Stage stage, int by) {
        List<Stage> stages = ((Axis) stage.eContainer()).getStages();
        int to = Elements.number(stage) + by;
        Optional<Edit> edit = to < 0 || to >= stages.size() ? Optional.empty() : Optional.of(new ReorderStage(stage, to));
        edit.ifPresent(session::run);
        select(event, stage);
    }
}
