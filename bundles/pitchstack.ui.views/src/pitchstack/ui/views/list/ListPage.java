// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.ISharedImages;
import pitchstack.ui.views.Busy;
import pitchstack.ui.views.Notice;

/** The parts of the Target list view: how it is planned, what it comes to, the table, and the steps beside or below. */
final class ListPage {
    private static final int MARGIN = 6;
    private static final int NARROW = 60;
    /** The steps stand beside the table where below it they would leave only a few rows of it. */
    private static final int LOW_PX = 330;
    private static final int[] PARTS = {62, 38};

    private final Composite page;
    private final ListForm form;
    private final Label figures;
    private final Busy busy;
    private final Notice bad;
    private final SashForm halves;
    private final ListTable table;
    private final StopPane steps;

    ListPage(Composite parent, Runnable stop) {
        page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().margins(MARGIN, MARGIN).spacing(MARGIN, MARGIN).applyTo(page);
        form = new ListForm(page);
        figures = new Label(page, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(NARROW, SWT.DEFAULT).applyTo(figures);
        busy = new Busy(page, 1, "Planning the list", stop);
        bad = new Notice(page, ISharedImages.IMG_OBJS_ERROR_TSK, 1);
        halves = new SashForm(page, SWT.VERTICAL);
        GridDataFactory.fillDefaults().grab(true, true).hint(NARROW, NARROW).applyTo(halves);
        table = new ListTable(halves);
        steps = new StopPane(halves);
        halves.setWeights(PARTS);
        halves.addListener(SWT.Resize, e -> turn());
    }

    private void turn() {
        Rectangle area = halves.getClientArea();
        int orientation = area.height < LOW_PX && area.width > area.height ? SWT.HORIZONTAL : SWT.VERTICAL;
        if (halves.getOrientation() != orientation) {
            halves.setOrientation(orientation);
        }
    }

    Control control() {
        return page;
    }

    ListForm form() {
        return form;
    }

    Busy busy() {
        return busy;
    }

    ListTable table() {
        return table;
    }

    StopPane steps() {
        return steps;
    }

    /** Says what the list comes to. */
    void say(String sentence) {
        figures.setText(sentence.replace("&", "&&"));
        page.layout();
    }

    /** Says what cannot be taken, or nothing. */
    void problem(String sentence) {
        bad.say(sentence);
        page.layout();
    }
}
