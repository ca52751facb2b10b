// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Supplier;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import pitchstack.model.Target;

/** What is selected while the Target view is active: the saved target picked there, or else what the editor has selected. */
final class PickedTarget implements ISelectionProvider {
    private final IWorkbenchPage page;
    private final Supplier<Optional<Target>> picked;
    private final CopyOnWriteArrayList<ISelectionChangedListener> listeners = new CopyOnWriteArrayList<>();

    /**
     * @param page the page of the editor
     * @param picked the saved target that is picked, if any
     */
    PickedTarget(IWorkbenchPage page, Supplier<Optional<Target>> picked) {
        this.page = page;
        this.picked = picked;
    }

    /** Tells that another target is picked, or none. */
    void changed() {
        SelectionChangedEvent event = new SelectionChangedEvent(this, getSelection());
        listeners.forEach(listener -> listener.selectionChanged(event));
    }

    @Override
    public ISelection getSelection() {
        return picked.get().<ISelection>map(StructuredSelection::new).orElseGet(this::inEditor);
    }

    private ISelection inEditor() {
        IEditorPart editor = page.getActiveEditor();
        ISelectionProvider provider = editor == null ? null : editor.getEditorSite().getSelectionProvider();
        return provider == null ? StructuredSelection.EMPTY : provider.getSelection();
    }

    /** Targets are picked by people only. */
    @Override
    public void setSelection(ISelection selection) {
        // nothing here follows the selection of other parts
    }

    @Override
    public void addSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.addIfAbsent(listener);
    }

    @Override
    public void removeSelectionChangedListener(ISelectionChangedListener listener) {
        listeners.remove(listener);
    }
}
