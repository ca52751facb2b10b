// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.accuracy;

import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import pitchstack.core.accuracy.teeth.Joint;
import pitchstack.core.accuracy.teeth.SeatSimulation;
import pitchstack.core.accuracy.teeth.Seating;
import pitchstack.core.accuracy.teeth.SimulatedSeats;
import pitchstack.core.coverage.Outcome;
import pitchstack.core.plan.Progress;
import pitchstack.ui.views.Busy;
import pitchstack.ui.views.PageWork;

/** Draws rows of teeth by chance and seats each, to see how far the law can be trusted for so few teeth. */
final class ChanceCheck {
    /** Enough to tell a quarter of a per cent. */
    private static final int DRAWS = 500_000;
    /** The same each time, so that the same numbers come out. */
    private static final long SEED = 20;
    private static final double NEARLY_ONE = 0.999;

    private final TwinPage page;
    private final Supplier<Optional<Case>> asked;
    private final Label words;
    private final PageWork work;

    /** What is drawn. */
    record Case(Joint joint, double preloadN, double neighbours, Sizes sizes) { }

    ChanceCheck(TwinPage page, Supplier<Optional<Case>> asked) {
        this.page = page;
        this.asked = asked;
        Button check = new Button(page.content(), SWT.PUSH);
        check.setText("&Check by Chance");
        check.setToolTipText("Draws half a million rows of such teeth by chance, the same each time, seats each under"
                + " the preload, and says how far the law is off. Escape stops it.");
        GridDataFactory.swtDefaults().span(TwinPage.COLUMNS, 1).applyTo(check);
        check.addListener(SWT.Selection, e -> begin());
        check.addListener(SWT.KeyDown, this::key);
        Busy busy = new Busy(page.content(), TwinPage.COLUMNS, "Drawing rows by chance; Escape stops it", this::stop);
        words = page.line();
        work = new PageWork(page.control(), busy, () -> { });
    }

    private void key(Event e) {
        if (e.character == SWT.ESC) {
            stop();
        }
    }

    private void begin() {
        Case what = asked.get().orElse(null);
        if (what != null) {
            say("");
            work.begin("Rows drawn by chance", progress -> draw(what, progress),
                    "Drawing by chance failed; what went wrong is in the program's log.", this::say,
                    found -> say(new TeethWords(what.sizes()).simulated(found, what.joint().at(what.preloadN()))));
        }
    }

    private static Outcome<SimulatedSeats> draw(Case what, Progress progress) {
        Seating row = what.joint().seating(what.preloadN(), Math.min(NEARLY_ONE, what.neighbours()));
        Optional<SimulatedSeats> found = SeatSimulation.run(row, DRAWS, SEED, Asked.watch(progress));
        return found.<Outcome<SimulatedSeats>>map(Outcome.Done::new).orElseGet(Outcome.Cancelled::new);
    }

    private void stop() {
        if (work.isBusy()) {
            work.forget();
            say("Stopped.");
        }
    }

    private void say(String sentence) {
        TwinPage.say(words, sentence);
        page.layout();
    }

    /** Ends drawing, and forgets what was found. */
    void rest() {
        work.rest();
        TwinPage.say(words, "");
    }
}
