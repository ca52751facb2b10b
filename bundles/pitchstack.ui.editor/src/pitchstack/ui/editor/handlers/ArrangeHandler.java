// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import java.util.List;
import java.util.Optional;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import pitchstack.edit.AddTargets;
import pitchstack.edit.ArrangeTargets;
import pitchstack.edit.Edit;
import pitchstack.edit.PasteStages;
import pitchstack.edit.ReorderStage;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.model.Stage;
import pitchstack.model.Target;
import pitchstack.ui.editor.parts.Elements;

/** Moves the selected stage up or down in its stack, or the target in its list, or duplicates it, as the command says. */
public final class ArrangeHandler extends StageHandler {
    @Override
    boolean applies(EObject element) {
        return Elements.stage(element).isPresent() || element instanceof Target;
    }

    @Override
    void run(ExecutionEvent event, Session session, EObject element) {
        if (element instanceof Target target) {
            arrange(event, session, target);
            return;
        }
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

    /** A copy goes behind the target in its list; up and down are places in that list. */
    private static void arrange(ExecutionEvent event, Session session, Target target) {
        Axis axis = (Axis) target.eContainer();
        if (event.getCommand().getId().equals("pitchstack.ui.editor.duplicate")) {
            Target copy = EcoreUtil.copy(target);
            session.run(new AddTargets(axis, axis.getTargets().indexOf(target) + 1, List.of(copy), "Duplicate target"));
            select(event, copy);
            return;
        }
        ArrangeTargets moved = ArrangeTargets.byOne(axis, List.of(target),
                !event.getCommand().getId().equals("pitchstack.ui.editor.stageUp"));
        if (!moved.isIdle()) {
            session.run(moved);
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
