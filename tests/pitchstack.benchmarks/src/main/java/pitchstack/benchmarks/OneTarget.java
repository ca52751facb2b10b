// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;

/** One target after another, each from another setting, by the planner and by three rivals. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class OneTarget {
    private static final int TARGETS = 1024;
    /** Targets on which all must agree before anything is measured. */
    private static final int COMPARED = 5;

    /** The problem measured. */
    @Param({"A", "B", "C"})
    public Problem problem;

    private Planner planner;
    private CpSat cpSat;
    private Choco choco;
    private BruteForce force;
    private long[] targets;
    private Setting[] settings;
    private int next;

    /** Prepares all four, and refuses to measure what does not agree. */
    @Setup
    public void prepare() {
        AxisSpec axis = problem.axis();
        planner = Planner.of(axis);
        cpSat = new CpSat(axis);
        choco = new Choco(axis);
        force = new BruteForce(axis);
        targets = problem.targets(TARGETS);
        settings = problem.settings(axis, TARGETS);
        for (int i = 0; i < COMPARED; i++) {
            long effort = effort(plan(i));
            agree("CP-SAT", effort, cpSat.leastEffort(targets[i], Problem.TOLERANCE, settings[i]));
            agree("choco", effort, choco.leastEffort(targets[i], Problem.TOLERANCE, settings[i]));
            if (problem != Problem.C) {
                agree("brute force", effort, force.leastEffort(targets[i], Problem.TOLERANCE, settings[i]));
            }
        }
    }

    /**
     * Rivals keep shift limits at the end of a move only. Where a limit would be broken on the way the planner's stages take
     * turns, which costs more, or do not get there.
     */
    private void agree(String rival, long effort, long found) {
        boolean limited = !planner.axis().shiftLimits().isEmpty();
        boolean wrong = limited ? effort != CpSat.NONE && (found == CpSat.NONE || found > effort) : effort != found;
        if (wrong) {
            throw new IllegalStateException("The planner found an effort of " + effort + ", " + rival + " of " + found);
        }
    }

    private Answer plan(int i) {
        return planner.plan(new PlanRequest(targets[i], Problem.TOLERANCE, settings[i], WornPolicy.AVOID, 0));
    }

    private static long effort(Answer answer) {
        return answer instanceof Answer.Reached reached ? reached.best().effortMs() : CpSat.NONE;
    }

    private int next() {
        next = (next + 1) % TARGETS;
        return next;
    }

    /** The planner. */
    @Benchmark
    public Answer planner() {
        return plan(next());
    }

    /** CP-SAT, one worker. */
    @Benchmark
    public long cpSat() {
        int i = next();
        return cpSat.leastEffort(targets[i], Problem.TOLERANCE, settings[i]);
    }

    /** choco, helped with a window. */
    @Benchmark
    public long choco() {
        int i = next();
        return choco.leastEffort(targets[i], Problem.TOLERANCE, settings[i]);
    }

    /** Every setting, where that ends within a second. */
    @Benchmark
    public long bruteForce() {
        if (problem == Problem.C) {
            throw new UnsupportedOperationException("C has more settings than can be tried in an hour");
        }
        int i = next();
        return force.leastEffort(targets[i], Problem.TOLERANCE, settings[i]);
    }
}
