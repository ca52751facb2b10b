// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.emf.ecore.EObject;
import pitchstack.edit.AddElement;
import pitchstack.edit.NewStack;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.model.Stage;
import pitchstack.ui.editor.files.Shop;
import pitchstack.ui.editor.parts.Elements;

/** Puts a stage on the selected one, or on top where the axis is selected, and selects it. */
public final class AddStageHandler extends StageHandler {
    @Override
    boolean applies(EObject element) {
        return Elements.axis(element).isPresent();
    }

    @Override
    void run(ExecutionEvent event, Session session, EObject element) {
        Axis axis = Elements.axis(element).orElseThrow();
        Stage stage = NewStack.stage(axis);
        Shop.get().costs().giveTo(stage);
        session.run(AddElement.stage(axis, Elements.stage(element).map(below -> Elements.number(below) + 1)
                .orElse(axis.getStages().size()), stage));
        select(event, stage);
    }
}
