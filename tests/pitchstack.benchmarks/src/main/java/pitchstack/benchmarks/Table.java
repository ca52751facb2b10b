// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.Setting;

/** A table of targets, all from one setting in the middle of the travel; times are for one target. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class Table {
    private static final int TARGETS = 100_000;

    /** The problem measured. */
    @Param({"A", "B", "C"})
    public Problem problem;

    private Planner planner;
    private Setting home;
    private long[] targets;

    /** Prepares planner and targets. */
    @Setup
    public void prepare() {
        planner = Planner.of(problem.axis());
        int middle = (int) (Problem.TRAVEL / 2 / planner.axis().stages().get(0).pitch());
        home = Setting.zero(planner.axis().stages().size()).with(0, middle);
        targets = problem.targets(TARGETS);
    }

    /** The planner, asked target by target. */
    @Benchmark
    @OperationsPerInvocation(TARGETS)
    public long planner() {
        long effort = 0;
        for (long target : targets) {
            Answer answer = planner.plan(new PlanRequest(target, Problem.TOLERANCE, home, WornPolicy.AVOID, 0));
            effort += answer instanceof Answer.Reached reached ? reached.best().effortMs() : 0;
        }
        return effort;
    }

    /** What cannot be beaten: reading every target once. */
    @Benchmark
    @OperationsPerInvocation(TARGETS)
    public long floor() {
        long sum = 0;
        for (long target : targets) {
            sum += target;
        }
        return sum;
    }
}
