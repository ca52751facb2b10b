// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import pitchstack.core.geometry.solid.Node;
import pitchstack.core.geometry.solid.TriangleSink;
import pitchstack.core.plan.Progress;

/**
 * Parts as binary STL: 80 bytes of text, the number of triangles, 50 bytes for each. The format has no unit, so that the
 * text says millimetres, and no more digits than a 32-bit float: see {@link #stepMm}.
 */
public final class BinaryStl {
    /** Must not begin with “solid”, by which readers know the other kind of STL. */
    private static final String TEXT = "Pitchstack; lengths in millimetres";
    private static final int TEXT_BYTES = 80;
    private static final int TRIANGLE_BYTES = 50;

    private BinaryStl() {
    }

    /** How far apart two neighbouring lengths are that the format can tell: 1/2²³ to 1/2²⁴ of the length. */
    public static double stepMm(double lengthMm) {
        return Math.ulp((float) lengthMm);
    }

    /**
     * Writes a file.
     *
     * @param plate the parts, at least one
     * @param progress is told how far it is
     * @param to where it goes; it stays open
     * @return whether it is whole; it is not where it was cancelled
     * @throws IOException if it cannot be written there
     */
    public static boolean write(List<? extends Placed<?>> plate, Progress progress, OutputStream to) throws IOException {
        BufferedOutputStream out = new BufferedOutputStream(to, 1 << 16);
        Passes passes = new Passes(plate.size(), progress);
        Count count = new Count(passes);
        for (Placed<?> placed : plate) {
            placed.solid().send(count);
            if (!passes.next()) {
                return false;
            }
        }
        ByteBuffer head = little(TEXT_BYTES + Integer.BYTES).put(TEXT.getBytes(StandardCharsets.US_ASCII));
        out.write(head.position(TEXT_BYTES).putInt(count.triangles).array());
        for (Placed<?> placed : plate) {
            Facets facets = new Facets(out, placed.yMm(), passes);
            placed.solid().send(facets);
            facets.check();
            if (!passes.next()) {
                return false;
            }
        }
        out.flush();
        return true;
    }

    private static ByteBuffer little(int bytes) {
        return ByteBuffer.allocate(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static final class Count implements TriangleSink {
        private final Passes passes;
        private int triangles;

        Count(Passes passes) {
            this.passes = passes;
        }

        @Override
        public boolean goesOn(double share) {
            return passes.goesOn(share);
        }

        @Override
        public void node(Node node) {
            // Only triangles are written.
        }

        @Override
        public void triangle(Node a, Node b, Node c) {
            triangles++;
        }
    }

    private static final class Facets implements TriangleSink {
        private final OutputStream out;
        private final double yMm;
        private final Passes passes;
        private final ByteBuffer facet = little(TRIANGLE_BYTES);
        private IOException failure;

        Facets(OutputStream out, double yMm, Passes passes) {
            this.out = out;
            this.yMm = yMm;
            this.passes = passes;
        }

        @Override
        public boolean goesOn(double share) {
            return passes.goesOn(share);
        }

        @Override
        public void node(Node node) {
            // Every triangle brings its own corners.
        }

        @Override
        public void triangle(Node a, Node b, Node c) {
            facet.clear();
            normal(a, b, c);
            corner(a);
            corner(b);
            corner(c);
            facet.putShort((short) 0);
            try {
                if (failure == null) {
                    out.write(facet.array());
                }
            } catch (IOException e) {
                failure = e;
            }
        }

        private void normal(Node a, Node b, Node c) {
            double x = (b.y() - a.y()) * (c.z() - a.z()) - (b.z() - a.z()) * (c.y() - a.y());
            double y = (b.z() - a.z()) * (c.x() - a.x()) - (b.x() - a.x()) * (c.z() - a.z());
            double z = (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
            double length = Math.sqrt(x * x + y * y + z * z);
            facet.putFloat((float) (x / length)).putFloat((float) (y / length)).putFloat((float) (z / length));
        }

        private void corner(Node node) {
            facet.putFloat((float) node.x()).putFloat((float) (node.y() + yMm)).putFloat((float) node.z());
        }

        void check() throws IOException {
            if (failure != null) {
                throw failure;
            }
        }
    }
}
