// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.PageBook;
import org.eclipse.ui.part.ViewPart;
import pitchstack.core.check.Finding;
import pitchstack.core.check.Severity;
import pitchstack.edit.Session;
import pitchstack.edit.SessionListener.Change;
import pitchstack.ui.views.ActiveSession;
import pitchstack.ui.views.BesideEditor;
import pitchstack.ui.views.HistoryActions;
import pitchstack.ui.views.Message;

/** The Target view: what moves reach a position of the axis that is looked at. */
public final class TargetView extends ViewPart {
    /** Id of this view. */
    public static final String ID = "pitchstack.ui.views.target";

    private PageBook book;
    private Message message;
    private TargetPage page;
    private Dialogue dialogue;
    private ActiveSession active;
    private HistoryActions history;
    private boolean planning;

    @Override
    public void createPartControl(Composite parent) {
        book = new PageBook(parent, SWT.NONE);
        message = new Message(book);
        page = new TargetPage(book);
        PickedTarget selection = new PickedTarget(getSite().getPage(), () -> page.saved().selected());
        dialogue = new Dialogue(page, Drafts.of(getSite().getWorkbenchWindow().getWorkbench()), selection::changed);
        getSite().setSelectionProvider(selection);
        active = new ActiveSession(getSite().getPage(), this::switched, this::changed);
        history = new HistoryActions(active, getViewSite().getActionBars());
        switched();
    }

    @Override
    public void dispose() {
        if (active != null) {
            active.dispose();
        }
        super.dispose();
    }

    @Override
    public void setFocus() {
        if (planning) {
            page.form().setFocus();
        } else {
            message.control().setFocus();
        }
    }

    @Override
    public <T> T getAdapter(Class<T> type) {
        T beside = BesideEditor.adapter(type, getSite().getPage());
        return beside != null ? beside : super.getAdapter(type);
    }

    /**
     * Fills in a target and plans it, as if it were typed; does nothing while there is no axis that can be planned on.
     *
     * @param target a position as people write it
     * @param tolerance a tolerance as people write it; blank for that of the axis
     */
    public void ask(String target, String tolerance) {
        if (planning) {
            dialogue.ask(target, tolerance);
        }
    }

    private void switched() {
        history.update();
        Session session = active.session().orElse(null);
        planning = session != null && !session.analysis().hasErrors();
        if (planning) {
            book.showPage(page.control());
            dialogue.show(session);
            return;
        }
        dialogue.rest();
        message.say(session == null
                ? "Open a stack, or an example from Help > Welcome, and the moves that reach a position are found here."
                : Sayings.axis(session.analysis().spec()) + " cannot be planned on before this is mended:\n\n"
                        + firstError(session).sentence() + "\n\nThe Findings view lists all there is, and leads to it.");
        book.showPage(message.control());
    }

    private static Finding firstError(Session session) {
        return session.analysis().findings().stream().filter(f -> f.severity() == Severity.ERROR).findFirst().orElseThrow();
    }

    private void changed(Change change) {
        history.update();
        boolean sound = !active.session().orElseThrow().analysis().hasErrors();
        if (change == Change.AXIS || sound != planning || !sound) {
            switched();
            return;
        }
        if (change == Change.DOCUMENT) {
            dialogue.refresh();
        } else if (change == Change.PREVIEW) {
            dialogue.moved();
        } else {
            dialogue.keep();
        }
    }
}
