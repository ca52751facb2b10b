// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;
import pitchstack.edit.Session;
import pitchstack.edit.SessionListener.Change;
import pitchstack.edit.ToothMark;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.WornRange;
import pitchstack.ui.views.AxisView;
import pitchstack.ui.views.EditorSelection;

/** The Wear view: marked and supposed teeth with what they cost, and how often each tooth will be seated. */
public final class WearView extends AxisView {
    /** Id of this view. */
    public static final String ID = "pitchstack.ui.views.wear";

    private TabFolder tabs;
    private MarksPane marks;
    private WhatIfWork cost;
    private SeatingsWork seatings;
    private EditorSelection selection;
    private boolean choosing;

    @Override
    protected Control createPage(Composite parent) {
        tabs = new TabFolder(parent, SWT.NONE);
        SashForm sash = new SashForm(tabs, SWT.HORIZONTAL);
        selection = new EditorSelection(getSite().getPage(), this::selected);
        marks = new MarksPane(sash, this::selectedRow, this::picked);
        cost = new WhatIfWork(sash);
        sash.setWeights(3, 2);
        seatings = new SeatingsWork(tabs);
        tab("Marked teeth", "Teeth that are worn or barred, and what that costs", sash);
        tab("Seatings", "How often each tooth will be seated by a list, so that wear can be foreseen", seatings.control());
        tabs.addListener(SWT.Selection, e -> session().ifPresent(this::work));
        tabs.addListener(SWT.Dispose, e -> selection.dispose());
        return tabs;
    }

    private void tab(String title, String tooltip, Control content) {
        TabItem item = new TabItem(tabs, SWT.NONE);
        item.setText(title);
        item.setToolTipText(tooltip);
        item.setControl(content);
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
        if (tabs.getSelectionIndex() == 0) {
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
        if (tabs.getSelectionIndex() == 0) {
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
