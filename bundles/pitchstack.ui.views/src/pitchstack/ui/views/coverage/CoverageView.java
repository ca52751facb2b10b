// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.action.Action;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
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
import pitchstack.ui.views.coverage.strip.Spot;
import pitchstack.ui.views.targets.TargetView;

/** The Coverage view: which positions of the axis that is looked at are reached. */
public final class CoverageView extends ViewPart {
    /** Id of this view. */
    public static final String ID = "pitchstack.ui.views.coverage";

    private PageBook book;
    private Message message;
    private CoveragePage page;
    private Charting charting;
    private ActiveSession active;
    private HistoryActions history;
    private boolean showing;

    @Override
    public void createPartControl(Composite parent) {
        book = new PageBook(parent, SWT.NONE);
        message = new Message(book);
        page = new CoveragePage(book);
        StripHands hands = new StripHands(page.strip(), this::plan);
        charting = new Charting(page, new StripHint(page.strip(), () -> active.session()));
        Action all = new Action("Show All") {
            @Override
            public void run() {
                hands.all();
            }
        };
        all.setToolTipText("Shows the whole travel (0 or a double click on the strip)");
        getViewSite().getActionBars().getToolBarManager().add(all);
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
        if (showing) {
            page.strip().control().setFocus();
        } else {
            message.control().setFocus();
        }
    }

    @Override
    public <T> T getAdapter(Class<T> type) {
        T beside = BesideEditor.adapter(type, getSite().getPage());
        return beside != null ? beside : super.getAdapter(type);
    }

    private void switched() {
        history.update();
        Session session = active.session().orElse(null);
        showing = session != null && !session.analysis().hasErrors();
        if (showing) {
            book.showPage(page.control());
            charting.show(session);
            return;
        }
        charting.rest();
        message.say(session == null
                ? "Open a stack, and what it reaches of its travel is drawn here."
                : "What this axis reaches can be drawn once this is mended:\n\n" + firstError(session).sentence()
                        + "\n\nThe Findings view lists all there is, and leads to it.");
        book.showPage(message.control());
    }

    private static Finding firstError(Session session) {
        return session.analysis().findings().stream().filter(f -> f.severity() == Severity.ERROR).findFirst().orElseThrow();
    }

    private void changed(Change change) {
        history.update();
        boolean sound = !active.session().orElseThrow().analysis().hasErrors();
        if (change == Change.AXIS || sound != showing || !sound) {
            switched();
        } else if (change == Change.DOCUMENT) {
            charting.refresh();
        } else if (change == Change.PREVIEW) {
            charting.moved();
        }
    }

    /** Puts a position into the Target view. */
    private void plan(Spot spot) {
        try {
            if (getSite().getPage().showView(TargetView.ID, null, IWorkbenchPage.VIEW_VISIBLE) instanceof TargetView view) {
                view.ask(spot.text(), page.tolerance());
            }
        } catch (PartInitException e) {
            ILog.of(CoverageView.class).error("The Target view cannot be shown.", e);
        }
    }
}
