// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pitchstack.core.geometry.BasicRack;
import pitchstack.core.geometry.Clamping;
import pitchstack.core.geometry.Outline;
import pitchstack.core.geometry.RowShape;
import pitchstack.core.geometry.Side;
import pitchstack.core.geometry.ToothForm;

class RowSolidTest {
    private static final ToothForm PLAIN = ToothForm.own(5, 20, 2.25 * 5 / Math.PI, 0.25 * 5 / Math.PI, 0);
    private static final ToothForm EASED = ToothForm.of(BasicRack.A, 5).eased(0.2, 0, 0);
    private static final ToothForm SOFT = ToothForm.of(BasicRack.D, 5).eased(0.1, 1, 0.4);

    private static RowPart part(Side side, ToothForm form, int teeth, double lean, Clamping clamping, int every) {
        return new RowPart("Row", new RowShape(side, form, Math.round(form.pitchMm() * 1e12), teeth, 12, lean), 10, clamping,
                every, -3, 0.4);
    }

    /** A row and its surface as drawn, built once for all tests that look at it. */
    private record Built(RowPart part, RowSolid solid, Surface surface) {
        static Built of(RowPart part) {
            RowSolid solid = new RowSolid(part, 1, 1);
            return new Built(part, solid, Surface.of(solid));
        }

        @Override
        public String toString() {
            return part.shape().teeth() + " teeth on a " + part.shape().side().word() + " row, lean " + part.shape().leanMm()
                    + " mm, " + part.clamping();
        }
    }

    private static final List<Built> ROWS = Stream.of(Side.values()).flatMap(side -> Stream.of(
                part(side, PLAIN, 1, 0, Clamping.NONE, 0),
                part(side, PLAIN, 24, 0, Clamping.NONE, 0),
                part(side, EASED, 23, 1.82, Clamping.holes(4, 30), 5),
                part(side, EASED, 43, 1.82, Clamping.slots(4, 13.7), 1),
                part(side, SOFT, 120, 1.82, Clamping.holes(3, 9), 10),
                part(side, SOFT, 12, 0, Clamping.slots(3, 20), 5),
                // Hardly any floor is left between the roundings of a well.
                part(side, ToothForm.own(5, 20, 3.58, 0.4, 0.7).eased(0, 1, 0), 31, 1.5, Clamping.NONE, 10)))
            .map(Built::of).toList();

    static Stream<Built> rows() {
        return ROWS.stream();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theSurfaceIsClosedAndEveryEdgeRunsBothWays(Built row) {
        assertEquals(0, row.surface().looseEdges());
        assertEquals(0, row.surface().triangles().size() % 2);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void cornersEdgesAndTrianglesCountTheHolesThroughIt(Built row) {
        // Euler: V − E + F = 2 − 2g with E = 3F/2, and every hole through the row raises the genus g by one.
        assertEquals(2 - 2 * row.solid().plan().holes().size(), row.surface().euler());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theVolumeOfTheTrianglesIsThatOfTheClosedForm(Built row) {
        // Chords stand off their arcs by 2 µm at most; all arcs of a tooth together are shorter than 12 mm.
        RowShape shape = row.part().shape();
        double arcs = shape.teeth() * 12 + row.solid().plan().holes().size() * 20;
        double off = row.surface().volume() - row.solid().volumeMm3();
        assertEquals(0, off, shape.form() == PLAIN ? 1e-8 : arcs * RowSolid.SAG_MM * row.part().faceMm());
    }

    @Test
    void aPlainRowHasTheVolumeOfTrapeziaAndABlock() {
        // 24 · (9.471061 mm² + 5 mm · (12 mm below the root)) · 10 mm; see RowShapeTest for the tooth.
        Surface surface = Surface.of(new RowSolid(part(Side.BASE, PLAIN, 24, 0, Clamping.NONE, 0), 1, 1));
        double marks = new RowSolid(part(Side.BASE, PLAIN, 24, 0, Clamping.NONE, 0), 1, 1).plan().pockets().stream()
                .mapToDouble(Pocket::areaMm2).sum() * 0.4;
        assertEquals(24 * (9.4710609 + 5 * 12) * 10 - marks, surface.volume(), 1e-4);
    }

    @Test
    void leaningTeethDoNotChangeTheVolumeOfWhatStandsAboveTheBody() {
        double straight = Surface.of(new RowSolid(part(Side.BASE, PLAIN, 24, 0, Clamping.NONE, 0), 1, 1)).volume();
        double leaning = Surface.of(new RowSolid(part(Side.BASE, PLAIN, 24, 2, Clamping.NONE, 0), 1, 1)).volume();
        // The body alone is longer, by the 2 mm that the teeth lean.
        assertEquals(straight + 2 * 12 * 10, leaning, 1e-8);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void noTriangleCrossesAnother(Built row) {
        assertEquals(List.of(), Crossing.of(row.surface()));
        assertTrue(row.surface().smallestArea() > 1e-7, () -> "smallest " + row.surface().smallestArea());
    }

    @Test
    void factorsScaleEveryLengthAndTheVolume() {
        RowPart part = part(Side.RIDER, EASED, 23, 1.82, Clamping.holes(4, 30), 5);
        Surface drawn = Surface.of(new RowSolid(part, 1, 1));
        Surface scaled = Surface.of(new RowSolid(part, 1.002, 0.997));
        assertEquals(drawn.volume() * 1.002 * 0.997, scaled.volume(), 1e-8);
        for (int i = 0; i < drawn.nodes().size(); i++) {
            assertEquals(drawn.nodes().get(i).x() * 1.002, scaled.nodes().get(i).x(), 1e-11);
            assertEquals(drawn.nodes().get(i).y() * 0.997, scaled.nodes().get(i).y(), 1e-11);
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theRowLiesInTheCornerOfTheBedAndReachesAsFarAsItSays(Built row) {
        RowSolid solid = new RowSolid(row.part(), 1.01, 0.99);
        List<Node> nodes = Surface.of(solid).nodes();
        assertEquals(0, nodes.stream().mapToDouble(Node::x).min().orElseThrow(), 1e-9);
        assertEquals(0, nodes.stream().mapToDouble(Node::y).min().orElseThrow(), 1e-9);
        assertEquals(0, nodes.stream().mapToDouble(Node::z).min().orElseThrow(), 0);
        assertEquals(solid.extent().xMm(), nodes.stream().mapToDouble(Node::x).max().orElseThrow(), 1e-9);
        assertEquals(solid.extent().yMm(), nodes.stream().mapToDouble(Node::y).max().orElseThrow(), 1e-9);
        assertEquals(solid.extent().zMm(), nodes.stream().mapToDouble(Node::z).max().orElseThrow(), 0);
    }

    @Test
    void bothRowsOfAPairLeanTheSameWaySoThatTheyMesh() {
        // Tip corners of the first tooth, on the bed and half way up the face.
        for (Side side : Side.values()) {
            List<Node> nodes = Surface.of(new RowSolid(part(side, PLAIN, 5, 2, Clamping.NONE, 0), 1, 1)).nodes();
            double tip = side == Side.BASE ? nodes.stream().mapToDouble(Node::y).max().orElseThrow() : 0;
            double low = nodes.stream().filter(n -> n.y() == tip && n.z() == 0).mapToDouble(Node::x).min().orElseThrow();
            double middle = nodes.stream().filter(n -> n.y() == tip && n.z() == 5).mapToDouble(Node::x).min().orElseThrow();
            assertEquals(2, middle - low, 1e-12);
        }
    }

    @Test
    void numbersStandInTheTopFaceAndAreCountedFromTheGivenOne() {
        RowPart part = part(Side.BASE, EASED, 23, 0, Clamping.holes(4, 30), 5);
        RowPlan plan = new RowSolid(part, 1, 1).plan();
        // Numbers 0, 5, 10, 15 on teeth 3, 8, 13, 18: four ticks, six digits, and an arrow.
        assertEquals(4 + 6 + 1, plan.pockets().size());
        assertEquals(List.of(17.5, 42.5, 67.5, 92.5), ticks(plan));
        assertTrue(plan.remarks().isEmpty(), () -> plan.remarks().toString());
    }

    @Test
    void theTicksOfBothRowsLineUpWhereTheyMate() {
        RowPlan base = new RowSolid(part(Side.BASE, EASED, 23, 0, Clamping.NONE, 1), 1, 1).plan();
        RowPlan rider = new RowSolid(part(Side.RIDER, EASED, 23, 0, Clamping.NONE, 1), 1, 1).plan();
        // The last base tooth has only half a gap, and no room for a tick.
        assertEquals(ticks(base), ticks(rider).subList(0, 22));
        assertEquals(22, ticks(base).size());
    }

    private static List<Double> ticks(RowPlan plan) {
        // Of marks with four corners only a minus is wider than high. A nanometre settles the rounding.
        return plan.pockets().stream().filter(pocket -> pocket.islands().isEmpty()).map(Pocket::rim)
                .filter(rim -> rim.size() == 4)
                .filter(rim -> rim.get(1).x() - rim.get(0).x() < rim.get(2).y() - rim.get(1).y())
                .map(rim -> Math.round((rim.get(0).x() + rim.get(1).x()) / 2 * 1e6) / 1e6).toList();
    }

    @Test
    void holesStandEvenlyAboutTheMiddle() {
        List<Outline> holes = new RowSolid(part(Side.BASE, EASED, 20, 0, Clamping.holes(4, 30), 0), 1, 1).plan().holes();
        // 100 mm of row: 4 holes at 30 mm reach over 90 mm, and two margins of 0.8 mm with half a hole each are left.
        assertEquals(List.of(2.5, 32.5, 62.5, 92.5), holes.stream().map(h -> h.corners().get(0).x()).toList());
    }

    @Test
    void aThinBodyHasNoMarksAndTheRowSaysSo() {
        RowShape thin = new RowShape(Side.BASE, EASED, 5_000_000_000_000L, 20, 4, 0);
        RowPlan plan = new RowSolid(new RowPart("Thin", thin, 10, Clamping.NONE, 5, 0, 0.4), 1, 1).plan();
        assertTrue(plan.pockets().isEmpty());
        assertEquals(List.of("There is no room to engrave numbers and arrow: they need 3.20 mm of the body's thickness beside"
                + " holes and margins, and 2.40 mm is left; make the body thicker, or number fewer teeth."),
                plan.remarks().stream().map(Remark::sentence).toList());
    }

    @Test
    void whatCannotBeMadeIsSaidInASentence() {
        assertFalse(RowPlan.problem(part(Side.BASE, EASED, 20, 0, Clamping.holes(4, 30), 0)).isPresent());
        assertEquals("A clamping hole of 11.00 mm needs a body of 12.60 mm; this one is 12.00 mm thick.",
                RowPlan.problem(part(Side.BASE, EASED, 20, 0, Clamping.holes(11, 30), 0)).orElseThrow());
        assertEquals("Clamping holes stand 8.00 mm apart; 8.80 mm or more leaves a wall between them.",
                RowPlan.problem(part(Side.BASE, EASED, 20, 0, Clamping.slots(4, 8), 0)).orElseThrow());
        assertEquals("A row of 5.00 mm is too short for a clamping hole 4.00 mm long.",
                RowPlan.problem(part(Side.BASE, EASED, 1, 0, Clamping.holes(4, 30), 0)).orElseThrow());
        assertEquals("The row has 0 teeth; it needs one at least.",
                RowPlan.problem(part(Side.BASE, EASED, 0, 0, Clamping.NONE, 0)).orElseThrow());
    }
}
