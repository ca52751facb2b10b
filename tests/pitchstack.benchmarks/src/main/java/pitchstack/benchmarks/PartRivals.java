// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import eu.mihosoft.jcsg.CSG;
import eu.mihosoft.jcsg.Extrude;
import eu.mihosoft.vvecmath.Vector3d;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
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
import pitchstack.core.geometry.Point;
import pitchstack.core.geometry.solid.RowSolid;
import pitchstack.core.plan.Progress;
import pitchstack.export.part.BinaryStl;

/**
 * The same teeth and body, without holes and numbers, as STL: by Pitchstack, and by the library of solids JCSG, which
 * extrudes the side view aslant to the middle of the face and back; its body is aslant too, with the same volume but for
 * its ends, and its two halves are laid together, not joined.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class PartRivals {
    /** Teeth. */
    @Param({"20", "200"})
    public int problem;

    private List<Vector3d> view;

    /** Prepares the side view, and refuses to measure solids of different volumes. */
    @Setup
    public void prepare() {
        view = new ArrayList<>();
        for (Point point : Herringbone.bare(problem).sideView().polygon(RowSolid.SAG_MM)) {
            view.add(Vector3d.xyz(point.x(), point.y(), 0));
        }
        double ours = Herringbone.bare(problem).volumeMm3();
        double theirs = volume(half(0, Herringbone.LEAN_MM)) + volume(half(Herringbone.LEAN_MM, -Herringbone.LEAN_MM));
        if (Math.abs(theirs / ours - 1) > 1e-3) {
            throw new IllegalStateException("Volumes of " + ours + " and " + theirs + " mm³");
        }
    }

    private CSG half(double from, double lean) {
        double low = from == 0 ? 0 : Herringbone.FACE_MM / 2;
        List<Vector3d> moved = view.stream().map(p -> Vector3d.xyz(p.x() + from, p.y(), low)).toList();
        return Extrude.points(Vector3d.xyz(lean, 0, Herringbone.FACE_MM / 2), moved);
    }

    private static double volume(CSG solid) {
        return solid.getPolygons().stream().mapToDouble(polygon -> {
            double six = 0;
            for (int i = 1; i + 1 < polygon.vertices.size(); i++) {
                six += polygon.vertices.get(0).pos.dot(polygon.vertices.get(i).pos.crossed(polygon.vertices.get(i + 1).pos));
            }
            return six / 6;
        }).sum();
    }

    /** Pitchstack. */
    @Benchmark
    public void pitchstack() throws IOException {
        BinaryStl.write(Herringbone.file(Herringbone.bare(problem)).plate(), Progress.NONE, OutputStream.nullOutputStream());
    }

    /** JCSG, its own STL. */
    @Benchmark
    public void jcsg() throws IOException {
        OutputStream to = OutputStream.nullOutputStream();
        to.write(half(0, Herringbone.LEAN_MM).toStlString().getBytes(StandardCharsets.US_ASCII));
        to.write(half(Herringbone.LEAN_MM, -Herringbone.LEAN_MM).toStlString().getBytes(StandardCharsets.US_ASCII));
    }
}
