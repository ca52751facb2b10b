// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import pitchstack.core.coverage.Outcome;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.QuantityException;
import pitchstack.edit.Session;
import pitchstack.edit.ToothMark;
import pitchstack.model.WornRange;
import pitchstack.ui.views.Background;
import pitchstack.ui.views.coverage.Coverages.Wanted;

/** Keeps the page true to one sound axis: works out its coverage anew when the axis or the tolerance changes. */
final class Charting {
    /** A pause in typing after which it is worked out. */
    private static final int PAUSE_MS = 250;

    private final CoveragePage page;
    private final StripHint hint;
    private final Background background;
    private final Coverages coverages = new Coverages();
    private final Runnable ask = this::ask;
    private Session session;
    /** What was asked for last, so that moving a stage alone works nothing out. */
    private Wanted wanted;
    private Optional<ToothMark> selected = Optional.empty();
    private boolean fresh;

    Charting(CoveragePage page, StripHint hint) {
        this.page = page;
        this.hint = hint;
        background = new Background(control().getDisplay(), share -> {
            if (!control().isDisposed()) {
                page.busy().show(share);
            }
        });
        control().addListener(SWT.Dispose, e -> rest());
        page.onKeys(this::typed, this::again, this::stop);
    }

    private Control control() {
        return page.control();
    }

    /** Shows the axis that a session looks at, all of it, within its own tolerance. */
    void show(Session shown) {
        session = null;
        page.clear();
        selected = Optional.empty();
        session = shown;
        clear();
        refresh();
    }

    /** Takes up a change of the document. */
    void refresh() {
        AxisSpec axis = session.analysis().spec();
        page.hint(axis.scale().formatSize(axis.tolerance()));
        moved();
        ask();
    }

    /** Shows what a mark costs, or none. */
    void select(Optional<WornRange> range) {
        selected = range.map(ToothMark::of);
        ask();
    }

    /** Shows where the carriage stands now. */
    void moved() {
        page.strip().chart().ifPresent(chart -> page.strip().show(chart.carriageAt(carriage())));
    }

    /** Ends working until something is shown again. */
    void rest() {
        control().getDisplay().timerExec(-1, ask);
        background.forget();
        page.busy().hide();
        wanted = null;
    }

    private long carriage() {
        return session.analysis().spec().position(session.shown());
    }

    private void typed() {
        if (session != null) {
            control().getDisplay().timerExec(PAUSE_MS, ask);
        }
    }

    /** Works out again even what was stopped. */
    private void again() {
        wanted = null;
        ask();
    }

    private void ask() {
        control().getDisplay().timerExec(-1, ask);
        AxisSpec axis = session.analysis().spec();
        try {
            long tolerance = axis.tolerance(page.tolerance());
            page.problem("");
            Wanted now = new Wanted(axis, tolerance,
                    session.supposed().isEmpty() ? Optional.empty() : Optional.of(session.supposedSpec()),
                    selected.map(mark -> mark.inNumbers().off(axis)));
            if (!now.equals(wanted)) {
                wanted = now;
                background.ask("Coverage", progress -> coverages.chart(now, progress), outcome -> ended(axis, outcome));
            }
        } catch (QuantityException e) {
            refuse(e.getMessage());
        }
    }

    private void refuse(String sentence) {
        rest();
        clear();
        page.say("");
        page.problem(sentence);
    }

    private void clear() {
        fresh = true;
        page.strip().show(null);
        hint.show(null);
    }

    /** Ends working, and says so. */
    void stop() {
        if (background.isBusy()) {
            background.forget();
            page.busy().hide();
            nothing("Stopped before it was worked out. Press Enter in the tolerance field to begin again.");
        }
    }

    private void ended(AxisSpec axis, Optional<Outcome<Charted>> outcome) {
        if (control().isDisposed()) {
            return;
        }
        page.busy().hide();
        if (outcome.isEmpty()) {
            nothing("The coverage of this axis could not be worked out; what went wrong is in the program's log.");
        } else if (outcome.get() instanceof Outcome.Refused<Charted> refused) {
            nothing(refused.why());
        } else if (outcome.get() instanceof Outcome.Done<Charted> done) {
            draw(axis, done.value());
        }
    }

    private void nothing(String sentence) {
        clear();
        page.say(sentence);
    }

    private void draw(AxisSpec axis, Charted charted) {
        if (charted.shares().isEmpty()) {
            nothing("No setting keeps the stops and limits of this axis, so that it has no travel to show.");
            return;
        }
        Chart all = Chart.all(axis.scale(), charted, carriage());
        Optional<Chart> before = fresh ? Optional.empty() : page.strip().chart();
        page.strip().show(before.map(chart -> all.look(chart.sight().on(all.sight()))).orElse(all));
        fresh = false;
        hint.show(charted.coverage());
        CoverageWords words = new CoverageWords(axis.scale());
        page.say(words.compared(charted, selected.map(ToothMark::teeth).orElse("")), words.figures(charted));
        page.legend().showLost(charted.supposed().isPresent());
    }
}
