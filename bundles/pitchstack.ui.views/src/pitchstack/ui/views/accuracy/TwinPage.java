// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.accuracy;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.PageBook;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Parts;
import pitchstack.ui.views.chart.ChartCanvas;

/**
 * A page in two halves: numbers that scroll on the left; on the right, or below them where that is too narrow, a chart, or,
 * at the press of a button, where the numbers come from.
 */
final class TwinPage {
    static final int COLUMNS = 4;
    private static final int NARROW = 60;
    private static final int MARGIN = 6;
    private static final int LEFT_PART = 11;
    private static final int RIGHT_PART = 9;

    private final Parts parts;
    private final ScrolledComposite scroll;
    private final Composite content;
    private final PageBook book;
    private final ChartCanvas chart;
    private final Text sources;
    private Button toggle;

    /** @param chartName what the chart is called */
    TwinPage(Composite parent, String chartName) {
        parts = new Parts(parent);
        scroll = new ScrolledComposite(parts.place(), SWT.H_SCROLL | SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        content = new Composite(scroll, SWT.NONE);
        scroll.setContent(content);
        GridLayoutFactory.swtDefaults().margins(MARGIN, MARGIN / 2).spacing(MARGIN, MARGIN / 2).numColumns(COLUMNS)
                .applyTo(content);
        book = new PageBook(parts.place(), SWT.NONE);
        chart = new ChartCanvas(book, chartName);
        sources = new Text(book, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.BORDER);
        Accessibles.name(sources, "Where the numbers come from");
        book.showPage(chart.control());
        parts.scrolling(scroll, LEFT_PART);
        parts.free(book, RIGHT_PART);
        scroll.addListener(SWT.Resize, e -> Parts.fit(scroll));
    }

    Control control() {
        return parts.control();
    }

    /** Where the numbers go, a grid of {@value #COLUMNS} columns. */
    Composite content() {
        return content;
    }

    ChartCanvas chart() {
        return chart;
    }

    /** A line of words over the whole width, which wrap. */
    Label line() {
        Label label = new Label(content, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).span(COLUMNS, 1).hint(NARROW, SWT.DEFAULT).applyTo(label);
        say(label, "");
        return label;
    }

    /** Sets words, in which & is an ordinary letter; without words the line takes no room. */
    static void say(Label label, String words) {
        label.setText(words.replace("&", "&&"));
        ((GridData) label.getLayoutData()).exclude = words.isEmpty();
        label.setVisible(!words.isEmpty());
    }

    /** The button that shows where the numbers come from; to be called where it shall stand. */
    void addToggle(Composite parent, int span) {
        toggle = new Button(parent, SWT.TOGGLE);
        toggle.setText("&Where These Numbers Come From");
        toggle.setToolTipText("Shows the formulas with their sources, and everything that was assumed, in place of the"
                + " chart");
        GridDataFactory.swtDefaults().span(span, 1).applyTo(toggle);
        toggle.addListener(SWT.Selection, e -> showSources(toggle.getSelection()));
    }

    private void showSources(boolean shown) {
        book.showPage(shown ? sources : chart.control());
        if (shown) {
            parts.reveal(book);
        }
    }

    /** Sets what is said of where the numbers come from. */
    void sources(String words) {
        if (!sources.getText().equals(words)) {
            sources.setText(words);
        }
    }

    /** Lays out anew after words have changed. */
    void layout() {
        content.layout(true, true);
        parts.fit();
        Parts.fit(scroll);
    }
}
