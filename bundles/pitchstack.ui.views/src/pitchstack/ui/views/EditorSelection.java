// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;

/** What the editor in front has selected, also while a view is active. */
public final class EditorSelection {
    private final IWorkbenchPage page;
    private final ISelectionChangedListener listener;
    private ISelectionProvider provider;

    /**
     * @param page the page of the editor
     * @param changed called when something else is selected in the editor that is followed
     */
    public EditorSelection(IWorkbenchPage page, Consumer<Optional<EObject>> changed) {
        this.page = page;
        this.listener = event -> changed.accept(element(event.getSelection()));
    }

    /** Follows the editor that is in front now, and no other. */
    public void follow() {
        dispose();
        IEditorPart editor = page.getActiveEditor();
        provider = editor == null ? null : editor.getEditorSite().getSelectionProvider();
        if (provider != null) {
            provider.addSelectionChangedListener(listener);
        }
    }

    /** Ends following. */
    public void dispose() {
        if (provider != null) {
            provider.removeSelectionChangedListener(listener);
            provider = null;
        }
    }

    /** The element that is selected, if one is. */
    public Optional<EObject> element() {
        return provider == null ? Optional.empty() : element(provider.getSelection());
    }

    /** Selects an element in the editor; the view stays active. */
    public void select(EObject element) {
        if (provider != null) {
            provider.setSelection(new StructuredSelection(element));
        }
    }

    private static Optional<EObject> element(ISelection selection) {
        return selection instanceof IStructuredSelection list && list.getFirstElement() instanceof EObject element
                ? Optional.of(element) : Optional.empty();
    }
}
