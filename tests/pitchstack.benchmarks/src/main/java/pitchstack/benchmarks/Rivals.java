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

/** The questions of {@link OneTarget}, put to two general-purpose solvers. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class Rivals {
    private static final int TARGETS = 1024;

    /** What is planned on. */
    @Param({"A", "B", "C", "FENCE", "PLATE", "SHIM"})
    public Case problem;

    private AxisSpec axis;
    private CpSat cpSat;
    private Choco choco;
    private long[] targets;
    private Setting[] settings;
    private int next;

    /** Prepares both, and refuses to measure what does not agree. */
    @Setup
    public void prepare() {
        axis = problem.axis();
        cpSat = new CpSat(axis);
        choco = new Choco(axis);
        targets = problem.targets(axis, TARGETS);
        settings = new Questions(axis).settings(TARGETS);
        new Agreement(axis, targets).check(settings);
    }

    private int next() {
        next = (next + 1) % TARGETS;
        return next;
    }

    /** CP-SAT, one worker. */
    @Benchmark
    public long cpSat() {
        int i = next();
        return cpSat.leastEffort(targets[i], axis.tolerance(), settings[i]);
    }

    /** choco, helped with a window. */
    @Benchmark
    public long choco() {
        int i = next();
        return choco.leastEffort(targets[i], axis.tolerance(), settings[i]);
    }
}
