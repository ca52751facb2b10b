// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pitchstack.analysis.part.PartSet;
import pitchstack.core.geometry.Corner;
import pitchstack.core.geometry.Outline;
import pitchstack.core.geometry.Side;
import pitchstack.core.geometry.solid.Extent;
import pitchstack.core.geometry.solid.RowSolid;
import pitchstack.core.geometry.solid.Solid;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFile;

/**
 * Parts as programs of others see them: STL in ADMesh, which looks for faults in meshes, 3MF in lib3mf, the library of those
 * who publish the format. Its strict mode is the check from outside; no copy of their schema is kept here, and that of
 * {@link ThreeMfTest} is our own.
 */
class MeshSoftwareTest {
    /** Both programs keep corners in 32 bits, and ADMesh adds up in them; a tooth of nine rows is thirty times as much. */
    private static final double NARROW = 1e-5;

    @TempDir
    private Path folder;

    /** A file and what it is. */
    private record Case(String what, PartFile<?> file) {
        @Override
        public String toString() {
            return what;
        }
    }

    static Stream<Case> files() {
        return Stream.concat(Stream.of(new Case("straight, with holes and numbers", SampleRows.file(SampleRows.small())),
                new Case("herringbone base row", SampleRows.file(SampleRows.full(Side.BASE))),
                new Case("herringbone rider row", SampleRows.file(SampleRows.full(Side.RIDER))),
                new Case("slots, wells and clamping slots",
                        SampleRows.file(SampleRows.soft(Side.BASE), SampleRows.soft(Side.RIDER))),
                new Case("a pair", SampleRows.both()), new Case("coupon", PartFile.coupon())),
                Stream.of("cross-cut-fence", "ram-shim", "slide-plate", "grid-plate")
                        .map(name -> new Case("all of " + name, example(name))));
    }

    private static PartFile<RowSolid> example(String name) {
        try {
            Positioner positioner = StackFile.load(Path.of(System.getProperty("basedir", "")).toAbsolutePath()
                    .resolve("../../bundles/pitchstack.help/examples/" + name + ".pitchstack").normalize()).positioner();
            return PartFile.of(name, PartSet.ready(PartSet.printed(positioner, positioner.getAxes())));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private Admesh inAdmesh(byte[] stl) throws Exception {
        return Admesh.of(Files.write(folder.resolve("part.stl"), stl));
    }

    @ParameterizedTest
    @MethodSource("files")
    void admeshFindsNoFaultAndEveryPart(Case one) throws Exception {
        byte[] stl = one.file().stl();
        Admesh seen = inAdmesh(stl);
        assertEquals(ByteBuffer.wrap(stl).order(ByteOrder.LITTLE_ENDIAN).getInt(80), seen.facets());
        assertEquals(List.of(0, 0, 0, 0, 0), List.of(seen.disconnected(), seen.degenerate(), seen.reversed(),
                seen.wrongNormals(), seen.backwards()), seen::toString);
        assertEquals(one.file().plate().size(), seen.parts());
    }

    @ParameterizedTest
    @MethodSource("files")
    void admeshFindsTheVolumeOfTheClosedFormAndTheStatedSize(Case one) throws Exception {
        Admesh seen = inAdmesh(one.file().stl());
        double volume = one.file().plate().stream().mapToDouble(p -> p.solid().volumeMm3()).sum();
        double chords = one.file().plate().stream().mapToDouble(p -> chordsMm3(p.solid())).sum();
        assertEquals(volume, seen.volume(), chords + NARROW * volume);
        Extent extent = one.file().extent();
        double[] box = {0, 0, 0, extent.xMm(), extent.yMm(), extent.zMm()};
        assertArrayEquals(box, seen.box(), BinaryStl.stepMm(Math.max(extent.xMm(), extent.yMm())));
    }

    @ParameterizedTest
    @MethodSource("files")
    void lib3mfReadsASoundMeshOfTheRightNamePlaceAndVolumeForEveryPart(Case one) {
        Lib3mf seen = Lib3mf.of(one.file().threeMf());
        assertEquals(Lib3mf.MILLIMETRE, seen.unit());
        List<? extends Placed<?>> plate = one.file().plate();
        assertEquals(plate.stream().map(p -> p.solid().name()).toList(),
                seen.meshes().stream().map(Lib3mf.Mesh::name).toList());
        for (int i = 0; i < plate.size(); i++) {
            Solid solid = plate.get(i).solid();
            Lib3mf.Mesh mesh = seen.meshes().get(i);
            assertTrue(mesh.sound(), mesh::name);
            double volume = solid.volumeMm3();
            assertEquals(volume, volume(mesh), chordsMm3(solid) + NARROW * volume, mesh::name);
            float[] box = {most(mesh, 0, -1), most(mesh, 1, -1), most(mesh, 2, -1), most(mesh, 0, 1), most(mesh, 1, 1),
                most(mesh, 2, 1)};
            Extent extent = solid.extent();
            assertArrayEquals(new float[] {0, 0, 0, (float) extent.xMm(), (float) extent.yMm(), (float) extent.zMm()}, box,
                    (float) BinaryStl.stepMm(extent.xMm()));
            float[] put = {1, 0, 0, 0, 0, 1, 0, (float) plate.get(i).yMm(), 0, 0, 1, 0};
            assertArrayEquals(put, seen.transforms().get(i), (float) BinaryStl.stepMm(256));
        }
    }

    /** What chords take from a row or add to it at most: their sag along all arcs of the side view. */
    private static double chordsMm3(Solid solid) {
        return solid instanceof RowSolid row ? RowSolid.SAG_MM * row.extent().zMm()
                * (arcsMm(row.sideView()) + row.plan().holes().stream().mapToDouble(MeshSoftwareTest::arcsMm).sum()) : 0;
    }

    private static double arcsMm(Outline outline) {
        double arcs = 0;
        for (int i = 0; i < outline.corners().size(); i++) {
            Corner a = outline.corners().get(i);
            Corner b = outline.corners().get((i + 1) % outline.corners().size());
            double quarter = Math.atan(Math.abs(a.bulge()));
            arcs += quarter == 0 ? 0 : Math.hypot(b.x() - a.x(), b.y() - a.y()) * 2 * quarter / Math.sin(2 * quarter);
        }
        return arcs;
    }

    private static double volume(Lib3mf.Mesh mesh) {
        double six = 0;
        float[] c = mesh.corners();
        for (int i = 0; i < mesh.triangles().length; i += 3) {
            int p = 3 * mesh.triangles()[i];
            int q = 3 * mesh.triangles()[i + 1];
            int r = 3 * mesh.triangles()[i + 2];
            six += c[p] * ((double) c[q + 1] * c[r + 2] - (double) c[q + 2] * c[r + 1])
                    + c[p + 1] * ((double) c[q + 2] * c[r] - (double) c[q] * c[r + 2])
                    + c[p + 2] * ((double) c[q] * c[r + 1] - (double) c[q + 1] * c[r]);
        }
        return six / 6;
    }

    /** The highest coordinate along an axis, or the lowest where the sign is −1. */
    private static float most(Lib3mf.Mesh mesh, int axis, int sign) {
        float most = Float.NEGATIVE_INFINITY;
        for (int i = axis; i < mesh.corners().length; i += 3) {
            most = Math.max(most, sign * mesh.corners()[i]);
        }
        return sign * most;
    }

    @Test
    void admeshDoesFindAHoleAndAFacetThatPointsInwards() throws Exception {
        byte[] stl = SampleRows.file(SampleRows.small()).stl();
        byte[] open = Arrays.copyOf(stl, stl.length - 50);
        ByteBuffer.wrap(open).order(ByteOrder.LITTLE_ENDIAN).putInt(80, (open.length - 84) / 50);
        assertEquals(3, inAdmesh(open).disconnected());

        byte[] turned = stl.clone();
        // The second and third corner of the last facet change places.
        System.arraycopy(stl, stl.length - 26, turned, stl.length - 14, 12);
        System.arraycopy(stl, stl.length - 14, turned, stl.length - 26, 12);
        assertEquals(1, inAdmesh(turned).reversed());
    }

    @Test
    void lib3mfDoesFindATriangleThatPointsInwardsAndRefusesWhatIsNot3mf() throws Exception {
        byte[] file = SampleRows.file(SampleRows.small()).threeMf();
        assertTrue(Lib3mf.of(file).meshes().get(0).sound());
        byte[] turned = changed(file, "v1=\"(\\d+)\" v2=\"(\\d+)\"", "v1=\"$2\" v2=\"$1\"");
        assertFalse(Lib3mf.of(turned).meshes().get(0).sound());
        assertThrows(AssertionError.class, () -> Lib3mf.of(changed(file, "v1=\"\\d+\"", "v1=\"999999\"")));
        assertThrows(AssertionError.class, () -> Lib3mf.of(changed(file, "unit=\"millimeter\"", "unit=\"league\"")));
    }

    /** The same package with the first place in its model that fits an expression changed. */
    private static byte[] changed(byte[] file, String from, String to) throws Exception {
        ReadThreeMf read = new ReadThreeMf(file);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (ZipEntry entry : read.entries()) {
                String text = new String(read.bytes("/" + entry.getName()), StandardCharsets.UTF_8);
                zip.putNextEntry(new ZipEntry(entry.getName()));
                zip.write(text.replaceFirst(from, to).getBytes(StandardCharsets.UTF_8));
            }
        }
        return bytes.toByteArray();
    }
}
