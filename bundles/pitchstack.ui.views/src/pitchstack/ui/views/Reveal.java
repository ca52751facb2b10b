// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import org.eclipse.core.runtime.ILog;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import pitchstack.edit.Session;
import pitchstack.model.Axis;

/** Takes a person to an element of the stack in front. */
public final class Reveal {
    private Reveal() {
    }

    /**
     * Selects an element in the editor in front and shows its properties.
     *
     * @param page the page of the editor
     * @param session the session in front
     * @param axis the axis that the element belongs to
     * @param element the axis itself or an element of it
     */
    public static void show(IWorkbenchPage page, Session session, Axis axis, EObject element) {
        if (session.axis() != axis) {
            session.look(axis);
        }
        IEditorPart editor = page.getActiveEditor();
        ISelectionProvider selection = editor == null ? null : editor.getEditorSite().getSelectionProvider();
        if (selection == null) {
            return;
        }
        page.activate(editor);
        selection.setSelection(new StructuredSelection(element));
        try {
            page.showView(IPageLayout.ID_PROP_SHEET, null, IWorkbenchPage.VIEW_VISIBLE);
        } catch (PartInitException e) {
            ILog.of(Reveal.class).error("The Properties view cannot be opened.", e);
        }
    }
}
