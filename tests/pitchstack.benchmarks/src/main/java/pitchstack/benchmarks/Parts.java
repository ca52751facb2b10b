// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import pitchstack.core.plan.Progress;
import pitchstack.export.part.BinaryStl;
import pitchstack.export.part.PartFile;
import pitchstack.export.part.PartFormat;
import pitchstack.export.part.ThreeMf;

/** A herringbone row with holes and numbers, from its sizes to the bytes of a file. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class Parts {
    /** Teeth. */
    @Param({"20", "200", "2000"})
    public int problem;

    /** As 3MF. */
    @Benchmark
    public void threeMf() throws IOException {
        ThreeMf.write("Herringbone", "", Herringbone.file(Herringbone.full(problem)).plate(), Progress.NONE,
                OutputStream.nullOutputStream());
    }

    /** As STL. */
    @Benchmark
    public void stl() throws IOException {
        BinaryStl.write(Herringbone.file(Herringbone.full(problem)).plate(), Progress.NONE, OutputStream.nullOutputStream());
    }

    /** As DXF. */
    @Benchmark
    public byte[] dxf() {
        return PartFile.bytes(Herringbone.file(Herringbone.full(problem)), PartFormat.DXF, Progress.NONE).orElseThrow();
    }

    /** For a heap as small as it can be: writes a row of as many teeth as the argument says, once. */
    public static void main(String[] arguments) throws IOException {
        ThreeMf.write("Herringbone", "", Herringbone.file(Herringbone.bare(Integer.parseInt(arguments[0]))).plate(),
                Progress.NONE, OutputStream.nullOutputStream());
        System.out.println(List.of(arguments) + " teeth in a heap of " + Runtime.getRuntime().maxMemory() / 1_000_000 + " MB");
    }
}
