// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;

/**
 * Compares the planner with its rivals before anything is measured. Rivals keep shift limits at the end of a move only, the
 * planner at every step: from a setting that keeps them it may need more effort than a rival says, never less. From a setting
 * that breaks every limit they have to hold at the end only for the planner, too, so that the efforts must be equal; and so
 * they must where there is no limit. choco counts in nanometres: it must lie between what the planner says for a tolerance
 * wider and narrower by what rounding can come to.
 */
final class Agreement {
    /** Targets compared of each kind. */
    private static final int COMPARED = 5;
    /** Half a nanometre for each rack tooth within choco's window and each printed tooth is more than enough. */
    private static final long ROUNDING = 50_000_000L;
    private static final long NONE = CpSat.NONE;

    private final AxisSpec axis;
    private final long[] targets;
    private final Planner planner;
    private final CpSat cpSat;
    private final Choco choco;

    Agreement(AxisSpec axis, long[] targets) {
        this.axis = axis;
        this.targets = targets;
        this.planner = Planner.of(axis);
        this.cpSat = new CpSat(axis);
        this.choco = new Choco(axis);
    }

    /** Throws an {@link IllegalStateException} where they do not agree. */
    void check(Setting[] settings) {
        boolean limited = !axis.shiftLimits().isEmpty();
        Setting[] tipped = new Questions(axis).tippedSettings(limited ? COMPARED : 0);
        for (int i = 0; i < COMPARED; i++) {
            check(targets[i], settings[i], !limited);
            if (limited) {
                check(targets[i], tipped[i], true);
            }
        }
    }

    private void check(long target, Setting from, boolean equal) {
        long effort = effort(target, axis.tolerance(), from);
        long exact = cpSat.leastEffort(target, axis.tolerance(), from);
        if (equal ? effort != exact : isLess(effort, exact)) {
            throw new IllegalStateException("The planner found an effort of " + effort + ", CP-SAT of " + exact + " for "
                    + target + " from " + from);
        }
        long rounded = choco.leastEffort(target, axis.tolerance(), from);
        long wide = effort(target, axis.tolerance() + ROUNDING, from);
        long narrow = effort(target, Math.max(0, axis.tolerance() - ROUNDING), from);
        if (equal && isLess(rounded, wide) || isLess(narrow, rounded)) {
            throw new IllegalStateException("The planner found an effort of " + wide + " to " + narrow + ", choco of "
                    + rounded + " for " + target + " from " + from);
        }
    }

    private static boolean isLess(long one, long other) {
        return one != NONE && (other == NONE || one < other);
    }

    private long effort(long target, long tolerance, Setting from) {
        Answer answer = planner.plan(new PlanRequest(target, tolerance, from, WornPolicy.ALLOW, 0));
        return answer instanceof Answer.Reached reached ? reached.best().effortMs() : NONE;
    }
}
