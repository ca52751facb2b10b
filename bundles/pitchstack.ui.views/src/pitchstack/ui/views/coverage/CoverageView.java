// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.action.Action;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import pitchstack.edit.Session;
import pitchstack.edit.SessionListener.Change;
import pitchstack.edit.ToothMark;
import pitchstack.model.WornRange;
import pitchstack.ui.views.AxisView;
import pitchstack.ui.views.EditorSelection;
import pitchstack.ui.views.coverage.strip.Spot;
import pitchstack.ui.views.targets.TargetView;

/** The Coverage view: which positions of the axis that is looked at are reached. */
public final class CoverageView extends AxisView {
    /** Id of this view. */
    public static final String ID = "pitchstack.ui.views.coverage";

    private CoveragePage page;
    private Charting charting;
    private EditorSelection selection;

    @Override
    protected Control createPage(Composite parent) {
        page = new CoveragePage(parent);
        StripHands hands = new StripHands(page.strip(), this::plan);
        charting = new Charting(page, new StripHint(page.strip(), this::session));
        selection = new EditorSelection(getSite().getPage(), this::selected);
        page.control().addListener(SWT.Dispose, e -> selection.dispose());
        new StripMenu(page.strip(), this::plan, hands);
        Action all = new Action("Show All") {
            @Override
            public void run() {
                hands.all();
            }
        };
        all.setToolTipText("Shows the whole travel (0 or a double click on the strip)");
        getViewSite().getActionBars().getToolBarManager().add(all);
        return page.control();
    }

    /** What stands in the field of the tolerance; empty for that of the axis. */
    public String tolerance() {
        return page.tolerance();
    }

    @Override
    protected void show(Session session) {
        selection.follow();
        charting.show(session);
        selected(selection.element());
    }

    /** Shows what a worn range costs while it is selected in the drawing, the outline or the view Wear. */
    private void selected(Optional<EObject> element) {
        if (isShowing()) {
            charting.select(element.filter(WornRange.class::isInstance).map(WornRange.class::cast)
                    .filter(ToothMark.ranges(session().orElseThrow().axis())::contains));
        }
    }

    @Override
    protected void refresh(Change change) {
        if (change == Change.DOCUMENT || change == Change.SUPPOSED) {
            selected(selection.element());
            charting.refresh();
        } else if (change == Change.PREVIEW) {
            charting.moved();
        }
    }

    @Override
    protected void rest() {
        charting.rest();
    }

    @Override
    protected String invitation() {
        return "Open a stack, and what it reaches of its travel is drawn here.";
    }

    @Override
    protected String obstacle(Session session) {
        return "What this axis reaches can be drawn once this is mended:";
    }

    @Override
    protected void focusPage() {
        page.strip().control().setFocus();
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
