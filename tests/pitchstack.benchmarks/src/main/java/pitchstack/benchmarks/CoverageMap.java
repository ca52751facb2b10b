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
import pitchstack.core.coverage.Coverage;
import pitchstack.core.coverage.EffortMap;
import pitchstack.core.coverage.EffortReach;
import pitchstack.core.coverage.GridCoverage;
import pitchstack.core.coverage.Reach;
import pitchstack.core.plan.Progress;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;

/** The coverage of 2 m, as a map of every micrometre and as exact stretches. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class CoverageMap {
    private static final long MICROMETRE = 1_000_000_000L;

    /** The problem measured. */
    @Param({"A", "B", "C"})
    public Problem problem;

    /** Whether a hundred rack teeth are worn and three barred. */
    @Param({"false", "true"})
    public boolean worn;

    private Reach reach;
    private EffortReach efforts;

    /** Prepares the axis. */
    @Setup
    public void prepare() {
        AxisSpec axis = axis();
        int middle = (int) (Problem.TRAVEL / 2 / axis.stages().get(0).pitch());
        reach = Reach.of(axis, Progress.NONE).get();
        efforts = EffortReach.of(axis, Setting.zero(axis.stages().size()).with(0, middle), Progress.NONE).get();
    }

    /** The axis measured. */
    AxisSpec axis() {
        return worn ? problem.wornAxis() : problem.axis();
    }

    /** Every micrometre clean, worn or not, into a new array of 2 MB. */
    @Benchmark
    public GridCoverage map() {
        return reach.grid(0, MICROMETRE, Problem.TOLERANCE, Progress.NONE).get();
    }

    /** The exact stretches. */
    @Benchmark
    public Coverage stretches() {
        return reach.coverage(Problem.TOLERANCE, Progress.NONE).get();
    }

    /** Preparing the axis, once for all tolerances and steps. */
    @Benchmark
    public Reach preparation() {
        return Reach.of(axis(), Progress.NONE).get();
    }

    /** The least effort from the middle of the travel for every micrometre, into a new array of 8 MB. */
    @Benchmark
    public EffortMap efforts() {
        return efforts.map(0, MICROMETRE, Problem.TOLERANCE, Progress.NONE).get();
    }
}
