// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import pitchstack.core.geometry.Side;
import pitchstack.core.geometry.solid.RowSolid;
import pitchstack.core.plan.Progress;
import pitchstack.export.dxf.Ezdxf;
import pitchstack.export.dxf.ReadDxf;
import pitchstack.export.dxf.Vertex;

/** Read back by a small reader of our own that knows the grammar of DXF and nothing of the writer, and by ezdxf. */
class ProfileDxfTest {
    private static final double MODULE = SampleRows.PITCH_MM / Math.PI;

    private static ReadDxf read(RowSolid... rows) {
        return new ReadDxf(text(rows));
    }

    private static String text(RowSolid... rows) {
        PartFile<RowSolid> file = SampleRows.file(rows);
        return new String(PartFile.bytes(file, PartFormat.DXF, Progress.NONE).orElseThrow(), StandardCharsets.US_ASCII);
    }

    @Test
    void thePitchMeasuredOverManyTeethIsTrueToANanometre() {
        for (Side side : Side.values()) {
            RowSolid row = SampleRows.full(side);
            double tip = side == Side.RIDER ? 0 : row.extent().yMm();
            double[] tips = profile(read(row)).stream().filter(v -> Math.abs(v.y() - tip) < 1e-9).mapToDouble(Vertex::x)
                    .sorted().toArray();
            assertEquals(2 * SampleRows.TEETH, tips.length);
            for (int i = 1; i < SampleRows.TEETH; i++) {
                assertEquals(i * SampleRows.PITCH_MM * SampleRows.FACTOR_X, tips[2 * i] - tips[0], 1e-6);
            }
        }
    }

    private static List<Vertex> profile(ReadDxf read) {
        return read.polylines().stream().filter(p -> p.layer().equals("PROFILE") && p.closed()).findFirst().orElseThrow()
                .vertices();
    }

    @Test
    void theAreaWithinThePolylineAndItsArcsIsThatOfTheRow() {
        // Four teeth of ISO 53 type B on 14 mm of body; a fillet adds two tangents less a sector of 70° to a sharp corner.
        double radius = 0.3 * MODULE;
        double half = Math.toRadians(35);
        double tooth = 3.7390249924 * MODULE * MODULE + 2 * radius * radius * (Math.tan(half) - half);
        double area = 4 * (tooth + SampleRows.PITCH_MM * 14);
        assertEquals(area, area(profile(read(SampleRows.small()))), 1e-6);
    }

    private static double area(List<Vertex> ring) {
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            Vertex a = ring.get(i);
            Vertex b = ring.get((i + 1) % ring.size());
            twice += a.x() * b.y() - b.x() * a.y();
            if (a.bulge() != 0) {
                double angle = 4 * Math.atan(a.bulge());
                double r = Math.hypot(b.x() - a.x(), b.y() - a.y()) / 2 / Math.sin(Math.abs(angle) / 2);
                twice += r * r * (angle - Math.sin(angle));
            }
        }
        return twice / 2;
    }

    @Test
    void filletsAreArcsOfTheRadiusOfTheForm() {
        List<Vertex> ring = profile(read(SampleRows.small()));
        int arcs = 0;
        for (int i = 0; i < ring.size(); i++) {
            Vertex a = ring.get(i);
            Vertex b = ring.get((i + 1) % ring.size());
            if (a.bulge() != 0) {
                arcs++;
                double sine = Math.sin(2 * Math.atan(Math.abs(a.bulge())));
                assertEquals(0.3 * MODULE, Math.hypot(b.x() - a.x(), b.y() - a.y()) / 2 / sine, 1e-7);
            }
        }
        assertEquals(8, arcs);
    }

    @Test
    void holesAreCirclesAndTheUnitIsSaid() {
        ReadDxf read = read(SampleRows.small());
        List<ReadDxf.Entity> circles = read.entities("ENTITIES").stream().filter(e -> e.kind().equals("CIRCLE")).toList();
        assertEquals(SampleRows.small().plan().holes().size(), circles.size());
        circles.forEach(circle -> assertEquals(2, circle.number(40), 1e-9));
        assertEquals("All lengths are millimetres", read.comments().get(0));
        assertTrue(read.entities("ENTITIES").stream().anyMatch(e -> e.kind().equals("TEXT")
                && e.text(1).equals("ALL LENGTHS ARE MILLIMETRES")));
    }

    @Test
    void theRowsOfASetLieBehindEachOther() {
        ReadDxf read = read(SampleRows.full(Side.BASE), SampleRows.full(Side.RIDER));
        List<ReadDxf.Polyline> profiles = read.polylines().stream().filter(p -> p.layer().equals("PROFILE")).toList();
        double end = profiles.get(0).vertices().stream().mapToDouble(Vertex::y).max().orElseThrow();
        double begin = profiles.get(1).vertices().stream().mapToDouble(Vertex::y).min().orElseThrow();
        assertEquals(5, begin - end, 1e-8);
    }

    @Test
    void ezdxfReadsProfilesOfTheirLengthWithTheirFilletsAndHoles() throws Exception {
        Ezdxf read = Ezdxf.of(text(SampleRows.small()));
        assertEquals(List.of(), read.faults());
        // Four teeth, as long as drawn.
        assertEquals(4 * SampleRows.PITCH_MM, read.reach("PROFILE")[2] - read.reach("PROFILE")[0], 1e-8);
        double[] fillets = read.bends("PROFILE");
        assertEquals(8, fillets.length);
        for (double radius : fillets) {
            assertEquals(0.3 * MODULE, radius, 1e-7);
        }
        List<double[]> holes = read.circles("HOLES");
        assertEquals(SampleRows.small().plan().holes().size(), holes.size());
        holes.forEach(hole -> assertEquals(2, hole[2], 1e-9));
        assertTrue(read.texts().contains("ALL LENGTHS ARE MILLIMETRES"), read.texts().toString());
    }
}
