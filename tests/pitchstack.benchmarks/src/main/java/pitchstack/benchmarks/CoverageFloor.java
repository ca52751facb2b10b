// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import pitchstack.core.coverage.Reached;

/** What no map of 2 m at 1 µm can beat: writing its array once. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class CoverageFloor {
    private static final int CELLS = (int) (Problem.TRAVEL / 1_000_000_000L) + 1;

    private final byte[] array = new byte[CELLS];

    /** A new array of 2 MB. */
    @Benchmark
    public byte[] bytes() {
        byte[] cells = new byte[CELLS];
        Arrays.fill(cells, Reached.NOT.code());
        return cells;
    }

    /** The same array again and again: it stays in the fast memory. */
    @Benchmark
    public byte[] bytesInPlace() {
        Arrays.fill(array, Reached.NOT.code());
        return array;
    }

    /** A new array of 8 MB for efforts. */
    @Benchmark
    public int[] efforts() {
        int[] cells = new int[CELLS];
        Arrays.fill(cells, CELLS);
        return cells;
    }
}
