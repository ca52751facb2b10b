// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import java.util.List;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.ISharedImages;
import pitchstack.core.coverage.RackShift;
import pitchstack.core.coverage.RowSeatings;
import pitchstack.core.stack.WornRange;
import pitchstack.ui.views.Busy;
import pitchstack.ui.views.Columns;
import pitchstack.ui.views.Notice;
import pitchstack.ui.views.Parts;

/** How often each tooth will be seated: what is counted, the most used teeth, and the bars of one row. */
final class SeatingsPane {
    private static final int NARROW = 60;
    private static final int MARGIN = 4;
    private static final int ROWS = 3;

    private final Parts parts;
    private final Composite pane;
    private final SeatingsForm form;
    private final Notice bad;
    private final Busy busy;
    private final SeatingsTable table;
    private final BarCanvas bars;
    private final Label words;
    private Load load;
    private RowSeatings drawn;

    /**
     * @param listed called when something else shall be counted
     * @param stop called when counting is no longer wanted
     */
    SeatingsPane(Composite parent, Runnable listed, Runnable stop) {
        parts = new Parts(parent);
        pane = new Composite(parts.place(), SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(MARGIN, MARGIN / 2).spacing(0, 2).applyTo(pane);
        form = new SeatingsForm(pane, listed, this::scaled);
        bad = new Notice(pane, ISharedImages.IMG_OBJS_ERROR_TSK, 1);
        busy = new Busy(pane, 1, "Planning the list", stop);
        SashForm sash = new SashForm(pane, SWT.HORIZONTAL);
        form.typedIn(sash);
        table = new SeatingsTable(sash, this::show);
        bars = new BarCanvas(sash);
        sash.setWeights(4, 9, 11);
        GridDataFactory.fillDefaults().grab(true, true).hint(NARROW, Columns.height(table.control(), ROWS)).applyTo(sash);
        words = new Label(pane, SWT.WRAP);
        words.setToolTipText("A tooth counts once each time its stage sets down on it, wherever the stages go one after the"
                + " other from where they stand now; teeth of a stage that stays are not counted again.");
        GridDataFactory.fillDefaults().grab(true, false).hint(NARROW, SWT.DEFAULT).applyTo(words);
        parts.whole(pane, 1);
    }

    Control control() {
        return parts.control();
    }

    SeatingsForm form() {
        return form;
    }

    Busy busy() {
        return busy;
    }

    /** Says what is wrong, or nothing. */
    void problem(String sentence) {
        bad.say(sentence);
        parts.fit();
    }

    /** Says one thing instead of a forecast. */
    void say(String sentence) {
        load = null;
        drawn = null;
        table.clear();
        bars.show(null, false);
        words.setText(sentence.replace("&", "&&"));
        parts.fit();
    }

    /** Shows a forecast. */
    void show(Load counted) {
        load = counted;
        show();
    }

    private void scaled() {
        problem(form.problem());
        show();
    }

    private void show() {
        if (load == null) {
            return;
        }
        SeatingsWords sentences = new SeatingsWords(load, form.times());
        table.show(load, form.times());
        Optional<RowSeatings> chosen = table.chosen();
        chosen.ifPresent(row -> {
            boolean same = drawn != null && drawn.stage() == row.stage() && drawn.row() == row.row();
            drawn = row;
            bars.show(row.counts().length == 0 ? null : Bars.all(sentences.title(row), row.counts(), form.times(), marks(row)),
                    same);
        });
        String shift = form.shift() == 0 ? "" : chosen.map(row -> "\n" + sentences.shift(
                RackShift.of(load.axis(), row.stage(), form.shift(), load.from(), load.settings())))
                .orElse("");
        words.setText((sentences.forecast() + shift).replace("&", "&&"));
        parts.fit();
    }

    private List<WornRange> marks(RowSeatings row) {
        return row.row().of(load.axis().stages().get(row.stage()).rows()).worn();
    }
}
