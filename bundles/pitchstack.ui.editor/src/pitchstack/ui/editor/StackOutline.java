// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor;

import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.ui.views.contentoutline.ContentOutlinePage;
import pitchstack.edit.Session;
import pitchstack.edit.SessionListener;
import pitchstack.edit.SessionListener.Change;
import pitchstack.ui.editor.parts.SideView;

/** The document as a tree, and the whole drawing in little below it. What is selected here is selected in the drawing, and the other way round. */
final class StackOutline extends ContentOutlinePage {
    private static final int OPEN_LEVELS = 3;
    private static final int TREE_PARTS = 3;
    private static final int OVERVIEW_PARTS = 1;

    private final Session session;
    private final ModelSelection drawing;
    private final EditorActions actions;
    private final SideView view;
    private SashForm halves;
    private final SessionListener sessionListener = this::sessionChanged;
    private final Listener recoloured = event -> showLabels();
    private final ISelectionChangedListener drawingListener = event -> setSelection(event.getSelection());

    /**
     * @param session the document
     * @param drawing what is selected in the drawing
     * @param actions the editor's actions, which serve here too
     * @param view what is seen of the drawing
     */
    StackOutline(Session session, ModelSelection drawing, EditorActions actions, SideView view) {
        this.view = view;
        this.session = session;
        this.drawing = drawing;
        this.actions = actions;
    }

    @Override
    public void createControl(Composite parent) {
        halves = new SashForm(parent, SWT.VERTICAL);
        super.createControl(halves);
        new Overview(halves, session, view);
        halves.setWeights(TREE_PARTS, OVERVIEW_PARTS);
        TreeViewer tree = getTreeViewer();
        tree.setContentProvider(new OutlineContent());
        showLabels();
        Display display = parent.getDisplay();
        display.addListener(SWT.Settings, recoloured);
        halves.addListener(SWT.Dispose, event -> display.removeListener(SWT.Settings, recoloured));
        tree.setAutoExpandLevel(OPEN_LEVELS);
        tree.getTree().getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                if (event.childID == ACC.CHILDID_SELF) {
                    event.result = "Outline of the positioner";
                }
            }
        });
        tree.setInput(session);
        session.addListener(sessionListener);
        drawing.addSelectionChangedListener(drawingListener);
        addSelectionChangedListener(event -> {
            if (!event.getSelection().equals(drawing.getSelection())) {
                drawing.setSelection(event.getSelection());
            }
            actions.update();
        });
        actions.register(getSite().getActionBars());
        setSelection(drawing.getSelection());
    }

    /** Words in two colours are laid out in those that the system had then, so they are laid out again in new ones. */
    private void showLabels() {
        getTreeViewer().setLabelProvider(new DelegatingStyledCellLabelProvider(new OutlineLabels(session)));
    }

    @Override
    public Control getControl() {
        return halves;
    }

    private void sessionChanged(Change change) {
        if (change == Change.DOCUMENT && getTreeViewer() != null) {
            getTreeViewer().refresh();
        }
    }

    @Override
    public void dispose() {
        session.removeListener(sessionListener);
        drawing.removeSelectionChangedListener(drawingListener);
        super.dispose();
    }
}
