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
import pitchstack.core.plan.TableEntry;
import pitchstack.core.plan.TableQuery;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;

/** A table of targets, all from one setting in the middle of the travel; times are for one target. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class Table {
    private static final int TARGETS = 100_000;
    /** Targets for which the table must say what the planner says before anything is measured. */
    private static final int COMPARED = 1000;

    /** What is planned on. */
    @Param({"A", "B", "C", "A_MEASURED", "B_MEASURED", "C_MEASURED", "FENCE", "PLATE", "SHIM"})
    public Case problem;

    private AxisSpec axis;
    private Planner planner;
    private Setting home;
    private long[] targets;

    /** Prepares planner and targets, and refuses to measure a table that does not agree with the planner. */
    @Setup
    public void prepare() {
        axis = problem.axis();
        planner = Planner.of(axis);
        home = problem.home(axis);
        targets = problem.targets(axis, TARGETS);
        TableQuery table = table();
        for (int i = 0; i < COMPARED; i++) {
            Answer one = planner.plan(new PlanRequest(targets[i], axis.tolerance(), home, WornPolicy.AVOID, 0));
            long effort = one instanceof Answer.Reached reached ? reached.best().effortMs() : -1;
            long listed = table.find(targets[i], axis.tolerance()).map(TableEntry::effortMs).orElse(-1L);
            if (effort != listed) {
                throw new IllegalStateException("The planner found an effort of " + effort + ", the table of " + listed);
            }
        }
    }

    private TableQuery table() {
        return planner.table(home, Directions.unknown(home.size()), WornPolicy.AVOID);
    }

    /** The table, preparing it for this setting included. */
    @Benchmark
    @OperationsPerInvocation(TARGETS)
    public long table100k() {
        TableQuery table = table();
        long sum = 0;
        for (long target : targets) {
            sum += table.find(target, axis.tolerance()).map(TableEntry::position).orElse(0L);
        }
        return sum;
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
