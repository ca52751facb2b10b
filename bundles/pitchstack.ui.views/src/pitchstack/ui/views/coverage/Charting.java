// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import java.util.Optional;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.QuantityException;
import pitchstack.edit.Session;
import pitchstack.edit.ToothMark;
import pitchstack.model.WornRange;
import pitchstack.ui.views.PageWork;
import pitchstack.ui.views.coverage.Coverages.Wanted;

/** Keeps the page true to one sound axis: works out its coverage anew when the axis or the tolerance changes. */
final class Charting {
    /** A pause in typing after which it is worked out. */
    private static final int PAUSE_MS = 250;

    private final CoveragePage page;
    private final StripHint hint;
    private final PageWork work;
    private final Coverages coverages = new Coverages();
    private Session session;
    /** What was asked for last, so that moving a stage alone works nothing out. */
    private Wanted wanted;
    private Optional<ToothMark> selected = Optional.empty();
    private boolean fresh;

    Charting(CoveragePage page, StripHint hint) {
        this.page = page;
        this.hint = hint;
        work = new PageWork(page.control(), page.busy(), this::ask);
        page.onKeys(this::typed, this::again, this::stop);
    }

    /** Shows the axis that a session looks at, all of it, within its own tolerance. */
    void show(Session shown) {
        session = null;
        page.clear();
        selected = Optional.empty();
        session = shown;
        // The figures of another axis must not stay while those of this one are worked out.
        nothing("");
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
        work.rest();
        wanted = null;
    }

    private long carriage() {
        return session.analysis().spec().position(session.shown());
    }

    private void typed() {
        if (session != null) {
            work.askAfter(PAUSE_MS);
        }
    }

    /** Works out again even what was stopped. */
    private void again() {
        wanted = null;
        ask();
    }

    private void ask() {
        work.askNoMore();
        AxisSpec axis = session.analysis().spec();
        try {
            long tolerance = axis.tolerance(page.tolerance());
            page.problem("");
            Wanted now = new Wanted(axis, tolerance,
                    session.supposed().isEmpty() ? Optional.empty() : Optional.of(session.supposedSpec()),
                    selected.map(mark -> mark.inNumbers().off(axis)));
            if (!now.equals(wanted)) {
                wanted = now;
                work.begin("Coverage", progress -> coverages.chart(now, progress),
                        "The coverage of this axis could not be worked out; what went wrong is in the program's log.",
                        this::nothing, charted -> draw(axis, charted));
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
        if (work.isBusy()) {
            work.forget();
            nothing("Stopped before it was worked out. Press Enter in the tolerance field to begin again.");
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
        hint.show(charted);
        CoverageWords words = new CoverageWords(axis.scale());
        page.say(words.compared(charted, selected.map(ToothMark::teeth).orElse("")), words.figures(charted));
        page.legend().showLost(charted.supposed().isPresent());
    }
}
