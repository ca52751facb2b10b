// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import java.util.Optional;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.expressions.IEvaluationContext;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.ui.ISources;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.handlers.HandlerUtil;
import pitchstack.edit.Session;
import pitchstack.ui.editor.parts.Elements;

/** A command on the selected element, wherever it is selected; greyed where it does not apply. */
abstract class StageHandler extends AbstractHandler {
    @Override
    public final void setEnabled(Object context) {
        Object selection = context instanceof IEvaluationContext evaluation
                ? evaluation.getVariable(ISources.ACTIVE_CURRENT_SELECTION_NAME) : null;
        setBaseEnabled(selection instanceof ISelection chosen && Elements.selected(chosen)
                .filter(element -> Session.of(element).isPresent()).filter(this::applies).isPresent());
    }

    @Override
    public final Object execute(ExecutionEvent event) {
        Optional<EObject> element = Elements.selected(HandlerUtil.getCurrentSelection(event)).filter(this::applies);
        element.flatMap(Session::of).ifPresent(session -> run(event, session, element.get()));
        return null;
    }

    /** Selects what a command has made, in the part it was called from. */
    static void select(ExecutionEvent event, EObject element) {
        IWorkbenchPart part = HandlerUtil.getActivePart(event);
        if (part != null && part.getSite().getSelectionProvider() != null) {
            part.getSite().getSelectionProvider().setSelection(new StructuredSelection(element));
        }
    }

    /** Whether the command can do something with an element. */
    abstract boolean applies(EObject element);

    /** Does it; the element applies. */
    abstract void run(ExecutionEvent event, Session session, EObject element);
}
