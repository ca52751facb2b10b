// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.ISharedImages;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Busy;
import pitchstack.ui.views.Notice;

/** The parts of the Coverage view below each other: tolerance and legend, the figures, the strip. */
final class CoveragePage {
    private static final int COLUMNS = 3;
    private static final int MARGIN = 6;
    private static final int FIELD_WIDTH = 120;
    /** Lets long sentences wrap instead of widening the view. */
    private static final int NARROW = 60;
    private static final int LEAST_STRIP_HEIGHT = 60;

    private final ScrolledComposite scroll;
    private final Composite page;
    private final Text tolerance;
    private final Legend legend;
    private final Notice bad;
    private final Busy busy;
    private final Label figures;
    private final StripCanvas strip;
    private Runnable stopped = () -> { };

    CoveragePage(Composite parent) {
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        page = new Composite(scroll, SWT.NONE);
        scroll.setContent(page);
        GridLayoutFactory.swtDefaults().margins(MARGIN, MARGIN / 2).spacing(MARGIN, MARGIN / 2).numColumns(COLUMNS)
                .applyTo(page);
        new Label(page, SWT.NONE).setText("Tolerance");
        tolerance = new Text(page, SWT.SINGLE | SWT.BORDER);
        tolerance.setToolTipText("Up to which error a position counts as reached; empty for the tolerance of the axis.");
        Accessibles.name(tolerance, "Tolerance");
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).hint(FIELD_WIDTH, SWT.DEFAULT).applyTo(tolerance);
        legend = new Legend(page);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(NARROW, SWT.DEFAULT)
                .applyTo(legend.control());
        bad = new Notice(page, ISharedImages.IMG_OBJS_ERROR_TSK, COLUMNS);
        busy = new Busy(page, COLUMNS, "Working out what is reached; Escape stops it", () -> stopped.run());
        figures = new Label(page, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).span(COLUMNS, 1).hint(NARROW, SWT.DEFAULT).applyTo(figures);
        strip = new StripCanvas(page);
        GridDataFactory.fillDefaults().grab(true, true).span(COLUMNS, 1).hint(NARROW, LEAST_STRIP_HEIGHT)
                .applyTo(strip.control());
        scroll.addListener(SWT.Resize, e -> layout());
    }

    Control control() {
        return scroll;
    }

    /** In a low view with large letters the strip keeps its height, and the page scrolls. */
    private void layout() {
        page.layout();
        scroll.setMinHeight(page.computeSize(scroll.getClientArea().width, SWT.DEFAULT).y);
    }

    StripCanvas strip() {
        return strip;
    }

    Legend legend() {
        return legend;
    }

    Busy busy() {
        return busy;
    }

    /** What stands in the tolerance field. */
    String tolerance() {
        return tolerance.getText();
    }

    /** Empties the tolerance field. */
    void clear() {
        tolerance.setText("");
    }

    /** @param axisTolerance the tolerance that is meant while none is typed, in words */
    void hint(String axisTolerance) {
        tolerance.setMessage(axisTolerance + " (axis)");
    }

    /**
     * Listens to the tolerance field and to Escape.
     *
     * @param typed called after each change
     * @param entered called when Enter is pressed
     * @param stopped called when Escape is pressed, here or in the strip, or work is stopped by its button
     */
    void onKeys(Runnable typed, Runnable entered, Runnable stopped) {
        this.stopped = stopped;
        tolerance.addListener(SWT.Modify, e -> typed.run());
        tolerance.addListener(SWT.DefaultSelection, e -> entered.run());
        tolerance.addListener(SWT.KeyDown, e -> ifEscape(e, stopped));
        strip.control().addListener(SWT.KeyDown, e -> ifEscape(e, stopped));
    }

    private static void ifEscape(Event e, Runnable stopped) {
        if (e.character == SWT.ESC) {
            stopped.run();
        }
    }

    /** Says one or a few sentences above the strip. */
    void say(String sentence) {
        say(sentence, null);
    }

    /** The same, with more at the pointer. */
    void say(String sentence, String more) {
        figures.setToolTipText(more);
        figures.setText(sentence.replace("&", "&&"));
        layout();
    }

    /** Says what is wrong with the tolerance, or nothing. */
    void problem(String sentence) {
        bad.say(sentence);
        layout();
    }
}
