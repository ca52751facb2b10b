// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import pitchstack.edit.Session;
import pitchstack.edit.SessionListener.Change;
import pitchstack.ui.views.AxisView;
import pitchstack.ui.views.Reveal;

/** The Target view: what moves reach a position of the axis that is looked at. */
public final class TargetView extends AxisView {
    /** Id of this view. */
    public static final String ID = "pitchstack.ui.views.target";

    private TargetPage page;
    private Dialogue dialogue;

    @Override
    protected Control createPage(Composite parent) {
        page = new TargetPage(parent);
        PickedTarget selection = new PickedTarget(getSite().getPage(), () -> page.saved().selected());
        dialogue = new Dialogue(page, Drafts.of(getSite().getWorkbenchWindow().getWorkbench()), selection::changed);
        page.saved().onShow(target -> session().ifPresent(
                session -> Reveal.show(getSite().getPage(), session, session.axis(), target)));
        getSite().setSelectionProvider(selection);
        return page.control();
    }

    /**
     * Fills in a target and plans it, as if it were typed; does nothing while there is no axis that can be planned on.
     *
     * @param target a position as people write it
     * @param tolerance a tolerance as people write it; blank for that of the axis
     */
    public void ask(String target, String tolerance) {
        if (isShowing()) {
            dialogue.ask(target, tolerance);
        }
    }

    @Override
    protected void show(Session session) {
        dialogue.show(session);
    }

    @Override
    protected void refresh(Change change) {
        if (change == Change.DOCUMENT) {
            dialogue.refresh();
        } else if (change == Change.PREVIEW) {
            dialogue.moved();
        } else {
            dialogue.keep();
        }
    }

    @Override
    protected void rest() {
        dialogue.rest();
    }

    @Override
    protected String invitation() {
        return "Open a stack, or an example from Help > Welcome, and the moves that reach a position are found here.";
    }

    @Override
    protected String obstacle(Session session) {
        return Sayings.axis(session.analysis().spec()) + " cannot be planned on before this is mended:";
    }

    @Override
    protected void focusPage() {
        page.form().setFocus();
    }
}
