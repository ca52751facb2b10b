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
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;

/** The questions of {@link OneTarget} answered by trying every setting, where that ends within some seconds. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class EverySetting {
    private static final int TARGETS = 1024;

    /** What is planned on; C has more settings than can be tried in an hour. */
    @Param({"A", "B"})
    public Case problem;

    private AxisSpec axis;
    private BruteForce force;
    private long[] targets;
    private Setting[] settings;
    private int next;

    /** Prepares the search. */
    @Setup
    public void prepare() {
        axis = problem.axis();
        force = new BruteForce(axis);
        targets = problem.targets(axis, TARGETS);
        settings = new Questions(axis).settings(TARGETS);
    }

    /** Every setting. */
    @Benchmark
    public long bruteForce() {
        next = (next + 1) % TARGETS;
        return force.leastEffort(targets[next], axis.tolerance(), settings[next]);
    }
}
