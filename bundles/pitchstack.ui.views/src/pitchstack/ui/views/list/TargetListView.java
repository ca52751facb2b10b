// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPartReference;
import pitchstack.edit.Session;
import pitchstack.edit.SessionListener.Change;
import pitchstack.ui.views.AxisView;
import pitchstack.ui.views.Reveal;

/** The Target list view: all targets of the axis that is looked at, planned together. */
public final class TargetListView extends AxisView {
    /** Id of this view. */
    public static final String ID = "pitchstack.ui.views.list";

    private final IPartListener2 use = new Use();
    private ListPlanning planning;
    private StopChoice choice;
    private ListCommands commands;

    @Override
    protected Control createPage(Composite parent) {
        planning = new ListPlanning(parent);
        choice = new StopChoice(planning, target -> session().ifPresent(
                session -> Reveal.show(getSite().getPage(), session, session.axis(), target)));
        ListEdits edits = new ListEdits(planning);
        CellEntry entry = new CellEntry(planning.page().table(), edits::take, () -> planning.page().problem(""));
        planning.onChange(() -> {
            entry.follow();
            choice.show();
        });
        commands = new ListCommands(planning, choice, edits, entry);
        commands.addTo(getViewSite().getActionBars());
        getSite().getPage().addPartListener(use);
        return planning.page().control();
    }

    @Override
    public void dispose() {
        getSite().getPage().removePartListener(use);
        if (choice != null) {
            choice.setUsed(false);
        }
        super.dispose();
    }

    @Override
    protected void show(Session session) {
        planning.show(session);
    }

    @Override
    protected void refresh(Change change) {
        if (change == Change.DOCUMENT) {
            planning.refresh();
        }
    }

    @Override
    protected void rest() {
        planning.rest();
    }

    @Override
    protected String invitation() {
        return "Open a stack, or an example from Help > Welcome, and all its targets are listed and planned here.";
    }

    @Override
    protected String obstacle(Session session) {
        return "No list can be planned on this axis before this is mended:";
    }

    @Override
    protected void focusPage() {
        planning.page().table().table().setFocus();
    }

    /** A preview must not stay in the drawing when something else is used. */
    private final class Use implements IPartListener2 {
        @Override
        public void partActivated(IWorkbenchPartReference part) {
            choice.setUsed(part.getPart(false) == TargetListView.this);
        }

        @Override
        public void partDeactivated(IWorkbenchPartReference part) {
            if (part.getPart(false) == TargetListView.this) {
                choice.setUsed(false);
            }
        }
    }
}
