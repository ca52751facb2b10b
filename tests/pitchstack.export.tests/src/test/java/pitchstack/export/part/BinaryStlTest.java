// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeSet;
import org.apache.commons.geometry.euclidean.threed.RegionBSPTree3D;
import org.apache.commons.geometry.euclidean.threed.mesh.TriangleMesh;
import org.apache.commons.geometry.io.euclidean.threed.IO3D;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.core.geometry.Side;
import pitchstack.core.geometry.solid.RowSolid;

/** Read back byte by byte, and opened in Apache Commons Geometry, a general-purpose library of geometry. */
class BinaryStlTest {
    /** Finer than what a 32-bit float tells apart at the size of these parts: one corner for one corner. */
    private static final Precision.DoubleEquivalence NEAR = Precision.doubleEquivalenceOfEpsilon(1e-4);

    @TempDir
    private Path folder;

    private TriangleMesh open(byte[] stl) throws Exception {
        Path file = folder.resolve("part.stl");
        Files.write(file, stl);
        return IO3D.readTriangleMesh(file, NEAR);
    }

    @Test
    void hasTheLayoutOfTheFormat() {
        byte[] stl = SampleRows.both().stl();
        ByteBuffer bytes = ByteBuffer.wrap(stl).order(ByteOrder.LITTLE_ENDIAN);
        int triangles = bytes.getInt(80);
        assertEquals(84 + 50 * triangles, stl.length);
        String text = new String(stl, 0, 80, StandardCharsets.US_ASCII);
        assertTrue(text.startsWith("Pitchstack; lengths in millimetres"), text);
    }

    @Test
    void normalsAreOfLengthOneAndPointOutwardsByTheRightHand() {
        ByteBuffer bytes = ByteBuffer.wrap(SampleRows.both().stl()).order(ByteOrder.LITTLE_ENDIAN);
        for (int i = 0; i < bytes.getInt(80); i++) {
            float[] f = new float[12];
            for (int k = 0; k < f.length; k++) {
                f[k] = bytes.getFloat(84 + 50 * i + 4 * k);
            }
            double x = (f[7] - f[4]) * (double) (f[11] - f[5]) - (f[8] - f[5]) * (double) (f[10] - f[4]);
            double y = (f[8] - f[5]) * (double) (f[9] - f[3]) - (f[6] - f[3]) * (double) (f[11] - f[5]);
            double z = (f[6] - f[3]) * (double) (f[10] - f[4]) - (f[7] - f[4]) * (double) (f[9] - f[3]);
            assertEquals(1, Math.sqrt(f[0] * f[0] + f[1] * f[1] + f[2] * f[2]), 1e-6);
            assertTrue(f[0] * x + f[1] * y + f[2] * z > 0.9 * Math.sqrt(x * x + y * y + z * z));
        }
    }

    @Test
    void aGeneralPurposeLibraryFindsAClosedMeshOfTheRightGenus() throws Exception {
        RowSolid row = SampleRows.full(Side.BASE);
        TriangleMesh mesh = open(SampleRows.file(row).stl());
        Map<Long, Integer> edges = new HashMap<>();
        mesh.faces().forEach(face -> {
            int[] v = face.getVertexIndices();
            for (int k = 0; k < 3; k++) {
                edges.merge((long) v[k] << 32 | v[(k + 1) % 3], 1, Integer::sum);
            }
        });
        assertTrue(edges.keySet().stream().allMatch(e -> edges.get(e) == 1 && edges.containsKey(Long.rotateLeft(e, 32))));
        assertEquals(2 - 2 * row.plan().holes().size(), mesh.getVertexCount() - edges.size() / 2 + mesh.getFaceCount());
        assertEquals(row.extent().xMm(), mesh.getBounds().getDiagonal().getX(), 1e-4);
        assertEquals(row.extent().yMm(), mesh.getBounds().getDiagonal().getY(), 1e-4);
        assertEquals(row.extent().zMm(), mesh.getBounds().getDiagonal().getZ(), 1e-4);
    }

    @Test
    void aGeneralPurposeLibraryMakesASolidOfTheClosedFormsVolumeOfIt() throws Exception {
        RowSolid row = SampleRows.small();
        RegionBSPTree3D solid = open(SampleRows.file(row).stl()).toTree();
        // Chords of arcs: 2 µm over less than 4 mm a tooth and 15 mm a hole, 12 mm wide; floats add less than that.
        assertEquals(row.volumeMm3(), solid.getSize(), 0.002 * (4 * 4 + 15 * row.plan().holes().size()) * 12);
        assertTrue(solid.isFull() == false && Double.isFinite(solid.getBoundarySize()));
    }

    @Test
    void thePitchIsTrueToTheLastDigitThatTheFormatCarries() {
        RowSolid row = SampleRows.full(Side.BASE);
        ByteBuffer bytes = ByteBuffer.wrap(SampleRows.file(row).stl()).order(ByteOrder.LITTLE_ENDIAN);
        TreeSet<Float> tips = new TreeSet<>();
        float top = (float) row.extent().yMm();
        for (int i = 0; i < bytes.getInt(80); i++) {
            for (int corner = 84 + 50 * i + 12; corner < 84 + 50 * i + 48; corner += 12) {
                if (bytes.getFloat(corner + 4) == top && bytes.getFloat(corner + 8) == 0) {
                    tips.add(bytes.getFloat(corner));
                }
            }
        }
        assertEquals(2 * SampleRows.TEETH, tips.size());
        Float[] x = tips.toArray(Float[]::new);
        for (int i = 1; i < SampleRows.TEETH; i++) {
            // Each end is rounded to the nearest float: half a step each, together one.
            assertEquals(i * SampleRows.PITCH_MM * SampleRows.FACTOR_X, (double) x[2 * i] - x[0], BinaryStl.stepMm(x[2 * i]));
        }
        assertEquals(1.52587890625e-5, BinaryStl.stepMm(200), 0, "1/65536 mm between 128 and 256 mm: 24 bits");
    }

    @Test
    void theSameRowsGiveTheSameBytes() {
        assertArrayEquals(SampleRows.both().stl(), SampleRows.both().stl());
        assertTrue(!Arrays.equals(SampleRows.both().stl(), SampleRows.file(SampleRows.small()).stl()));
    }
}
