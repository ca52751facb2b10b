// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor;

import java.util.concurrent.CopyOnWriteArrayList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.ISelectionProvider;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.ui.editor.parts.Elements;
import pitchstack.ui.editor.parts.StackViewer;

/**
 * What is selected in the drawing, as elements of the document; the axis itself where nothing on it is. Setting the
 * selection looks at the element's axis, selects what draws the element, and brings it into sight.
 */
public final class ModelSelection implements ISelectionProvider {
    private final Session session;
    private final StackViewer viewer;
    private final CopyOnWriteArrayList<ISelectionChangedListener> listeners = new CopyOnWriteArrayList<>();

    ModelSelection(Session session, StackViewer viewer) {
        this.session = session;
        this.viewer = viewer;
        viewer.addSelectionChangedListener(event -> tell());
    }

    private void tell() {
        SelectionChangedEvent event = new SelectionChangedEvent(this, getSelection());
        for (ISelectionChangedListener listener : listeners) {
            listener.selectionChanged(event);
        }
    }

    @Override
    public ISelection getSelection() {
        return new StructuredSelection(viewer.selectedElement().orElse(session.axis()));
    }

    @Override
    public void setSelection(ISelection selection) {
        Elements.selected(selection).filter(element -> element.eResource() == session.document()).ifPresent(this::select);
    }

    private void select(EObject element) {
        Axis axis = Elements.axis(element).orElse(session.axis());
        if (axis != session.axis()) {
            session.look(axis);
        }
        viewer.selectElement(element);
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
