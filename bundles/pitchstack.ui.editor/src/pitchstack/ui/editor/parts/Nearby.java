// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.Setting;

/**
 * Finds the positions next to the carriage that the axis can reach, away from the window's thread. While it works, or
 * where it is asked again, what was found before stands.
 */
final class Nearby {
    /** So many to either side: more than are seen apart, at any scale that shows teeth. */
    static final int TO_EITHER_SIDE = 24;
    private static final int PAUSE_MS = 120;
    /** Longer than this the positions to one side are not waited for; on the largest axes fewer are shown. */
    private static final long MOST_NS = 400_000_000;

    private final Display display;
    private final Consumer<long[]> found;
    private Search search;

    /** @param found told of the offsets from the carriage, lowest first, on the display's thread */
    Nearby(Display display, Consumer<long[]> found) {
        this.display = display;
        this.found = found;
    }

    /** Asks for the positions beside a setting, unless that was asked last. */
    void ask(AxisAnalysis analysis, Setting at) {
        if (search != null && search.analysis == analysis && search.at.equals(at)) {
            return;
        }
        forget();
        if (!analysis.hasErrors()) {
            search = new Search(analysis, at);
            search.setSystem(true);
            search.schedule(PAUSE_MS);
        } else {
            found.accept(new long[0]);
        }
    }

    /** Ends whatever is under way. */
    void forget() {
        if (search != null) {
            search.cancel();
            search = null;
        }
    }

    private final class Search extends Job {
        private final AxisAnalysis analysis;
        private final Setting at;

        Search(AxisAnalysis analysis, Setting at) {
            super("Positions beside the carriage");
            this.analysis = analysis;
            this.at = at;
        }

        @Override
        protected IStatus run(IProgressMonitor monitor) {
            Planner planner = analysis.planner().orElseThrow();
            List<Long> below = beside(planner, false, monitor);
            List<Long> above = beside(planner, true, monitor);
            if (monitor.isCanceled()) {
                return Status.CANCEL_STATUS;
            }
            List<Long> all = new ArrayList<>(below);
            Collections.reverse(all);
            all.addAll(above);
            long[] offsets = all.stream().mapToLong(Long::longValue).toArray();
            if (!display.isDisposed()) {
                display.asyncExec(() -> {
                    if (search == this) {
                        found.accept(offsets);
                    }
                });
            }
            return Status.OK_STATUS;
        }

        /** The nearest first. */
        private List<Long> beside(Planner planner, boolean up, IProgressMonitor monitor) {
            List<Long> offsets = new ArrayList<>();
            long from = planner.axis().position(at);
            long here = from;
            long end = System.nanoTime() + MOST_NS;
            while (offsets.size() < TO_EITHER_SIDE && System.nanoTime() < end && !monitor.isCanceled()) {
                Optional<Long> next = next(planner, here + (up ? 1 : -1), up);
                if (next.isEmpty()) {
                    break;
                }
                here = next.get();
                long offset = planner.axis().scale().difference(here, from);
                if (offset == 0 || up != offset > 0) {
                    // Once round.
                    break;
                }
                offsets.add(offset);
            }
            return offsets;
        }

        private Optional<Long> next(Planner planner, long target, boolean up) {
            Answer answer = planner.plan(new PlanRequest(target, 0, at, WornPolicy.ALLOW, 0));
            if (answer instanceof Answer.Reached reached) {
                return Optional.of(reached.best().position());
            }
            Answer.Nearest nearest = (Answer.Nearest) answer;
            return (up ? nearest.above() : nearest.below()).map(PlannedSetting::position);
        }
    }
}
