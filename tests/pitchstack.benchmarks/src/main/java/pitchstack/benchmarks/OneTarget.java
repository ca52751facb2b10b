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

/** One target after another, each from another setting, by the planner. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class OneTarget {
    private static final int TARGETS = 1024;

    /** What is planned on. */
    @Param({"A", "B", "C", "A_MEASURED", "B_MEASURED", "C_MEASURED", "FENCE", "PLATE", "SHIM"})
    public Case problem;

    private AxisSpec axis;
    private Planner planner;
    private long[] targets;
    private Setting[] settings;
    private int next;

    /** Prepares the planner. */
    @Setup
    public void prepare() {
        axis = problem.axis();
        planner = Planner.of(axis);
        targets = problem.targets(axis, TARGETS);
        settings = new Questions(axis).settings(TARGETS);
    }

    /** The planner. */
    @Benchmark
    public Answer planner() {
        next = (next + 1) % TARGETS;
        return planner.plan(new PlanRequest(targets[next], axis.tolerance(), settings[next], WornPolicy.AVOID, 0));
    }

    /** Preparing a planner, once an edit. */
    @Benchmark
    public Planner preparation() {
        return Planner.of(axis);
    }
}
