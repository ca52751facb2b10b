// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.part.PageBook;
import pitchstack.edit.Session;
import pitchstack.edit.SessionListener.Change;
import pitchstack.edit.ToothMark;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.WornRange;
import pitchstack.ui.views.AxisView;
import pitchstack.ui.views.EditorSelection;
import pitchstack.ui.views.PageButton;
import pitchstack.ui.views.Parts;
import pitchstack.ui.views.Reveal;

/** The Wear view: marked and supposed teeth with what they cost, and how often each tooth will be seated. */
public final class WearView extends AxisView {
    /** Id of this view. */
    public static final String ID = "pitchstack.ui.views.wear";

    private static final int MARKS_PART = 4;
    private static final int COST_PART = 3;

    private PageBook book;
    private Parts parts;
    private MarksPane marks;
    private WhatIfWork cost;
    private SeatingsWork seatings;
    private EditorSelection selection;
    private boolean choosing;

    @Override
    protected Control createPage(Composite parent) {
        book = new PageBook(parent, SWT.NONE);
        parts = new Parts(book);
        selection = new EditorSelection(getSite().getPage(), this::selected);
        marks = new MarksPane(parts.place(), this::selectedRow, this::picked, range -> session().ifPresent(
                session -> Reveal.show(getSite().getPage(), session, session.axis(), range)), parts::fit);
        cost = new WhatIfWork(parts.place());
        parts.whole(marks.control(), MARKS_PART);
        parts.scrolling(cost.control(), COST_PART);
        seatings = new SeatingsWork(book);
        book.showPage(parts.control());
        page("Marks", "Teeth that are worn or barred, and what that costs", parts.control()).setChecked(true);
        page("Seatings", "How often each tooth will be seated by a list, so that wear can be foreseen", seatings.control());
        book.addListener(SWT.Dispose, e -> selection.dispose());
        return book;
    }

    /** A page, and the button above it that shows it. */
    private PageButton page(String title, String tooltip, Control content) {
        return PageButton.add(getViewSite().getActionBars(), title, tooltip, () -> {
            book.showPage(content);
            session().filter(session -> isShowing()).ifPresent(this::work);
            focusPage();
        });
    }

    @Override
    protected void show(Session session) {
        selection.follow();
        cost.rest();
        seatings.rest();
        marks.show(session);
        work(session);
    }

    /** Only what is seen is worked out. */
    private void work(Session session) {
        if (parts.control().getVisible()) {
            cost.show(session);
        } else {
            seatings.show(session);
        }
    }

    @Override
    protected void refresh(Change change) {
        if (change == Change.DOCUMENT || change == Change.SUPPOSED) {
            marks.later();
            work(session().orElseThrow());
        }
    }

    @Override
    protected void rest() {
        cost.rest();
        seatings.rest();
    }

    @Override
    protected String invitation() {
        return "Open a stack, and its worn teeth, what they cost, and how often each tooth is seated are shown here.";
    }

    @Override
    protected String obstacle(Session session) {
        return "What wear costs this axis can be worked out once this is mended:";
    }

    @Override
    protected void focusPage() {
        if (parts.control().getVisible()) {
            marks.setFocus();
        } else {
            seatings.setFocus();
        }
    }

    /** What is chosen in the table is selected in the drawing too. */
    private void picked(Optional<MarkItem> item) {
        if (!choosing) {
            choosing = true;
            item.flatMap(MarkItem::range).ifPresent(selection::select);
            choosing = false;
        }
    }

    private void selected(Optional<EObject> element) {
        if (!choosing && isShowing()) {
            choosing = true;
            element.filter(WornRange.class::isInstance).ifPresent(marks::choose);
            choosing = false;
        }
    }

    /** The row that is selected in the drawing, or the base row of a stage. */
    private Row selectedRow() {
        EObject element = selection.element().orElse(null);
        if (element instanceof WornRange range && range.eContainer() instanceof Row row) {
            return row;
        }
        if (element instanceof Row row) {
            return row;
        }
        Stage stage = element instanceof Stage one ? one : session().orElseThrow().axis().getStages().get(0);
        return ToothMark.rows(stage).get(0);
    }
}
