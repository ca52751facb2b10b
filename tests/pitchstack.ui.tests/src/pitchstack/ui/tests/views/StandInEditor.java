// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.viewers.ListViewer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IPersistableElement;
import org.eclipse.ui.part.EditorPart;
import pitchstack.edit.Session;
import pitchstack.model.Stage;

/** An editor that offers a session and a selection of stages, and nothing else. */
public final class StandInEditor extends EditorPart {
    static final String ID = "pitchstack.ui.tests.standin";

    /** A session as an input. */
    record Input(Session session) implements IEditorInput {
        @Override
        public boolean exists() {
            return false;
        }

        @Override
        public ImageDescriptor getImageDescriptor() {
            return null;
        }

        @Override
        public String getName() {
            return session.positioner().getTitle();
        }

        @Override
        public IPersistableElement getPersistable() {
            return null;
        }

        @Override
        public String getToolTipText() {
            return getName();
        }

        @Override
        public <T> T getAdapter(Class<T> type) {
            return null;
        }
    }

    @Override
    public void init(IEditorSite site, IEditorInput input) {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
    }

    @Override
    public void createPartControl(Composite parent) {
        ListViewer list = new ListViewer(parent);
        list.setContentProvider(org.eclipse.jface.viewers.ArrayContentProvider.getInstance());
        list.setLabelProvider(org.eclipse.jface.viewers.LabelProvider.createTextProvider(o -> ((Stage) o).getName()));
        list.setInput(session().axis().getStages().toArray());
        getSite().setSelectionProvider(list);
    }

    private Session session() {
        return ((Input) getEditorInput()).session();
    }

    @Override
    public <T> T getAdapter(Class<T> type) {
        return type == Session.class ? type.cast(session()) : super.getAdapter(type);
    }

    @Override
    public void setFocus() {
        getSite().getShell().getDisplay();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void doSaveAs() {
        throw new UnsupportedOperationException();
    }

    @Override
    public boolean isDirty() {
        return false;
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }
}
