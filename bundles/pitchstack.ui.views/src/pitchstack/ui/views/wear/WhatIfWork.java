// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import java.util.List;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.analysis.TargetStops;
import pitchstack.core.coverage.WearMark;
import pitchstack.core.coverage.WhatIf;
import pitchstack.core.stack.AxisSpec;
import pitchstack.edit.Session;
import pitchstack.edit.ToothMark;
import pitchstack.ui.views.PageWork;

/** Keeps the cost of marks true: of those that are supposed, or while none is, of those in the file. */
final class WhatIfWork {
    /** A pause after which it is worked out, so that a run of edits is one piece of work. */
    private static final int PAUSE_MS = 100;

    private final WhatIfPane pane;
    private final PageWork work;
    private Session session;
    private WhatIf asked;

    WhatIfWork(Composite parent) {
        pane = new WhatIfPane(parent, this::stop);
        work = new PageWork(control(), pane.busy(), this::ask);
    }

    ScrolledComposite control() {
        return pane.control();
    }

    /** Shows what the marks of the axis cost that a session looks at. */
    void show(Session shown) {
        session = shown;
        work.askAfter(PAUSE_MS);
    }

    /** Ends working until something is shown again. */
    void rest() {
        work.rest();
        asked = null;
    }

    private void stop() {
        work.forget();
        pane.say("Stopped before it was worked out. Change a mark to begin again.");
    }

    private void ask() {
        AxisAnalysis analysis = session.analysis();
        if (control().isDisposed() || analysis.hasErrors()) {
            return;
        }
        List<ToothMark> supposed = session.supposed();
        boolean isSupposed = !supposed.isEmpty();
        List<WearMark> marks = (isSupposed ? supposed : ToothMark.ranges(session.axis()).stream().map(ToothMark::of).toList())
                .stream().map(ToothMark::inNumbers).toList();
        if (marks.isEmpty()) {
            rest();
            pane.say("No tooth is marked. Mark… marks teeth in the file; Suppose… shows what it would cost if teeth were worn"
                    + " or barred, and leaves the file as it is.");
            return;
        }
        TargetStops targets = TargetStops.of(analysis);
        WhatIf question = new WhatIf(isSupposed ? analysis.spec() : without(marks, analysis.spec()), marks,
                analysis.spec().tolerance(), analysis.current(), analysis.last(), targets.stops());
        if (!question.equals(asked)) {
            asked = question;
            work.begin("Cost of wear", question::answer,
                    "What these marks cost could not be worked out; what went wrong is in the program's log.", pane::say,
                    found -> pane.show(title(question, isSupposed), found, new WhatIfWords(question.axis().scale(),
                            question.stops(), isSupposed)));
        }
    }

    private static AxisSpec without(List<WearMark> marks, AxisSpec axis) {
        AxisSpec fit = axis;
        for (WearMark mark : marks) {
            fit = mark.off(fit);
        }
        return fit;
    }

    private static String title(WhatIf question, boolean isSupposed) {
        String within = ", within ±" + question.axis().scale().formatSize(question.tolerance()) + ":";
        int count = question.marks().size();
        return (isSupposed ? "If the " + (count == 1 ? "supposed mark were" : count + " supposed marks were")
                + " true" : "What the " + (count == 1 ? "mark" : count + " marks") + " of the file cost"
                + (count == 1 ? "s" : "")) + within;
    }
}
