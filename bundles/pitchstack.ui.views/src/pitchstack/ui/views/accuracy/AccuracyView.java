// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.accuracy;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.jface.action.Action;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.part.PageBook;
import pitchstack.edit.Session;
import pitchstack.edit.SessionListener.Change;
import pitchstack.ui.views.AxisView;
import pitchstack.ui.views.PageButton;

/** The Accuracy view: what the axis that is looked at should hold. */
public final class AccuracyView extends AxisView {
    /** Id of this view. */
    public static final String ID = "pitchstack.ui.views.accuracy";

    private final List<AccuracyPage> pages = new ArrayList<>();
    private PageBook book;
    private AccuracyPage front;

    @Override
    protected Control createPage(Composite parent) {
        book = new PageBook(parent, SWT.NONE);
        add("Budget", "How far from what is counted the carriage may stand, and what makes it", new BudgetPage(book))
                .setChecked(true);
        add("Travel", "How that changes along the travel", new TravelPage(book));
        add("Preload", "What preload, slots and deeper gaps do to the teeth of a joint", new TeethPage(book));
        add("Warmth", "What to aim at today, and what a season changes", new WarmthPage(book));
        front = pages.get(0);
        book.showPage(front.control());
        return book;
    }

    /** A page, and the button above it that shows it. */
    private Action add(String title, String tooltip, AccuracyPage page) {
        pages.add(page);
        return PageButton.add(getViewSite().getActionBars(), title, tooltip, () -> {
            front.rest();
            front = page;
            book.showPage(page.control());
            session().filter(session -> isShowing()).ifPresent(this::show);
            focusPage();
        });
    }

    /** Only what is seen is worked out. */
    @Override
    protected void show(Session session) {
        front.show(Looked.at(session));
    }

    @Override
    protected void refresh(Change change) {
        if (change == Change.DOCUMENT) {
            show(session().orElseThrow());
        }
    }

    @Override
    protected void rest() {
        pages.forEach(AccuracyPage::rest);
    }

    @Override
    protected String invitation() {
        return "Open a stack, and how well it should hold a position is worked out here.";
    }

    @Override
    protected String obstacle(Session session) {
        return "How well this axis should hold a position can be worked out once this is mended:";
    }

    @Override
    protected void focusPage() {
        front.setFocus();
    }
}
