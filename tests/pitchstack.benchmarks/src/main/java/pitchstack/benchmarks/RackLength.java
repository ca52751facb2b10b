// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import java.util.List;
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

/** One target on problem A with a rack of another length, targets and settings all over its travel. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class RackLength {
    private static final int TARGETS = 1024;

    /** Rack teeth that can be stood on. */
    @Param({"1000", "10000", "100000"})
    public int problem;

    private Planner planner;
    private long[] targets;
    private Setting[] settings;
    private int next;

    /** Prepares the planner. */
    @Setup
    public void prepare() {
        Pairs pairs = Problem.A.pairs().withRack(problem);
        AxisSpec axis = pairs.axis("A", pairs.rackTravel(), List.of());
        planner = Planner.of(axis);
        targets = new Questions(axis).targets(TARGETS, 1_000_000_000L, Problem.TRAVEL / 100);
        settings = new Questions(axis).settings(TARGETS);
    }

    /** The planner. */
    @Benchmark
    public Answer planner() {
        next = (next + 1) % TARGETS;
        return planner.plan(new PlanRequest(targets[next], Problem.TOLERANCE, settings[next], WornPolicy.AVOID, 0));
    }
}
