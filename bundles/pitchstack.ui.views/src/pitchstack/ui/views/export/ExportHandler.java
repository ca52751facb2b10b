// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.export;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.expressions.IEvaluationContext;
import org.eclipse.jface.window.Window;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.ISources;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;
import pitchstack.edit.Session;

/** Opens a wizard about the stack in front; greyed while no stack is open. */
public abstract class ExportHandler extends AbstractHandler {
    @Override
    public final void setEnabled(Object context) {
        Object editor = context instanceof IEvaluationContext variables
                ? variables.getVariable(ISources.ACTIVE_EDITOR_NAME) : null;
        setBaseEnabled(editor instanceof IEditorPart part && part.getAdapter(Session.class) != null);
    }

    @Override
    public final Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        IEditorPart editor = HandlerUtil.getActiveEditor(event);
        Session session = editor == null ? null : editor.getAdapter(Session.class);
        if (session != null) {
            ExportWizard wizard = wizard(session);
            if (new WizardDialog(window.getShell(), wizard).open() == Window.OK) {
                editor.getEditorSite().getActionBars().getStatusLineManager().setMessage("Written: " + wizard.written());
            }
        }
        return null;
    }

    /** The wizard to open. */
    protected abstract ExportWizard wizard(Session session);
}
