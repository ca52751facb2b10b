// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.util.List;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.part.PageBook;
import pitchstack.edit.Session;
import pitchstack.edit.SessionListener.Change;
import pitchstack.ui.views.AxisView;
import pitchstack.ui.views.Busy;
import pitchstack.ui.views.PageButton;

/**
 * The Measurements view: runs of readings of the axis that is looked at, how well the carriage comes back, the pitches they
 * tell, and the scale of printed parts.
 */
public final class MeasurementsView extends AxisView {
    /** Id of this view. */
    public static final String ID = "pitchstack.ui.views.runs";

    private final Runs runs = new Runs(this::chosen);
    private PageBook book;
    private RunBar bar;
    private PrintPane print;
    private List<RunPage> pages = List.of();
    private RunPage front;
    private RunWork work;
    private boolean outdated;

    @Override
    protected Control createPage(Composite parent) {
        Composite page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().margins(4, 4).spacing(0, 3).applyTo(page);
        bar = new RunBar(page, runs);
        Busy busy = new Busy(page, 1, "Working out what the run tells", () -> work.stop());
        book = new PageBook(page, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).hint(60, 60).applyTo(book);
        PitchPane pitches = new PitchPane(book, runs, () -> work.later());
        ReadingsPane readings = new ReadingsPane(book, runs);
        RepeatsPane repeats = new RepeatsPane(book, runs);
        print = new PrintPane(book, runs);
        pages = List.of(readings, repeats, pitches);
        work = new RunWork(page, busy, runs, pages, pitches);
        front = readings;
        book.showPage(readings.control());
        tab("Readings", "What was measured: a run of readings", readings).setChecked(true);
        tab("Repeats", "How well the carriage comes back, after ISO 230-2", repeats);
        tab("Pitches", "Which pitches the readings tell, what they buy, and Accept", pitches);
        tab("Print Scale", "By how much a printer prints too long or too short, from lengths measured on a part", print);
        return page;
    }

    private PageButton tab(String title, String tooltip, RunPage content) {
        return PageButton.add(getViewSite().getActionBars(), title, tooltip, () -> {
            front = content;
            book.showPage(content.control());
            focusPage();
        });
    }

    @Override
    protected void show(Session session) {
        follow(session);
    }

    private void follow(Session session) {
        runs.follow(session);
        chosen();
    }

    private void chosen() {
        bar.show(runs);
        pages.forEach(page -> page.show(runs));
        print.show(runs);
        work.later();
    }

    /** Waits for the event to end: the change may come from a cell that is still closing. */
    @Override
    protected void refresh(Change change) {
        if (change != Change.DOCUMENT || outdated) {
            return;
        }
        outdated = true;
        book.getDisplay().asyncExec(() -> {
            outdated = false;
            session().filter(session -> isShowing() && !book.isDisposed()).ifPresent(this::follow);
        });
    }

    @Override
    protected void rest() {
        work.rest();
    }

    @Override
    protected String invitation() {
        return "Open a stack, and what was measured on it, and what that tells, are shown here.";
    }

    @Override
    protected String obstacle(Session session) {
        return "Measurements of this axis can be looked at once this is mended:";
    }

    @Override
    protected void focusPage() {
        front.setFocus();
    }
}
