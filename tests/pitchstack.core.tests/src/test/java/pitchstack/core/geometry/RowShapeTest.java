// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RowShapeTest {
    private static final long FIVE_MM = 5_000_000_000_000L;
    private static final double MODULE = 5 / Math.PI;

    private static RowShape row(Side side, ToothForm form, int teeth, double body) {
        return new RowShape(side, form, FIVE_MM, teeth, body, 0);
    }

    private static double tooth(Outline outline, int teeth, double floor) {
        // The body below the reference line is a rectangle.
        return (outline.areaMm2() - teeth * 5 * floor) / teeth;
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void theAreaOfAToothWithoutFilletIsThatOfATrapezium(Side side) {
        // 2.25·(0.842856 + 2.480722)/2 = 3.739025 square modules, times (5/π)² = 9.471061 mm².
        ToothForm sharp = ToothForm.own(5, 20, 2.25 * MODULE, 0.25 * MODULE, 0);
        assertEquals(9.471061, tooth(row(side, sharp, 7, 4).outline(), 7, 4), 5e-7);
        assertEquals(3.739025, tooth(row(side, sharp, 7, 4).outline(), 7, 4) / MODULE / MODULE, 5e-7);
    }

    @Test
    void aFilletAddsWhatItsArcLeavesInTheCorner() {
        // Corner of a flank at 20° and the root: two tangents less a sector of 70°.
        double radius = 0.3 * MODULE;
        double half = Math.toRadians(35);
        double corner = radius * radius * (Math.tan(half) - half);
        ToothForm round = ToothForm.own(5, 20, 2.25 * MODULE, 0.25 * MODULE, radius);
        ToothForm sharp = ToothForm.own(5, 20, 2.25 * MODULE, 0.25 * MODULE, 0);
        assertEquals(2 * corner, tooth(row(Side.BASE, round, 7, 4).outline(), 7, 4)
                - tooth(row(Side.BASE, sharp, 7, 4).outline(), 7, 4), 1e-12);
    }

    @Test
    void reliefWellAndSlotTakeAwayWhatTheyShould() {
        ToothForm sharp = ToothForm.own(5, 20, 2.25 * MODULE, 0.25 * MODULE, 0);
        double plain = row(Side.BASE, sharp, 3, 6).outline().areaMm2();

        double half = Math.toRadians(35);
        double radius = 0.2 / Math.cos(Math.toRadians(20)) / Math.tan(half);
        double rounding = radius * radius * (Math.tan(half) - half);
        assertEquals(plain - 3 * 2 * rounding, row(Side.BASE, sharp.eased(0.2, 0, 0), 3, 6).outline().areaMm2(), 1e-11);

        double gap = 0.660871 * MODULE;
        assertEquals(plain - 3 * gap * 1.5, row(Side.BASE, sharp.eased(0, 1.5, 0), 3, 4.5).outline().areaMm2(), 1e-5);

        // A slot to the root whose end is a half circle.
        double depth = 2.25 * MODULE;
        double slot = 0.8 * depth - (0.4 * 0.8 - Math.PI * 0.4 * 0.4 / 2);
        assertEquals(plain - 3 * slot, row(Side.BASE, sharp.eased(0, 0, 0.8), 3, 6).outline().areaMm2(), 1e-11);
    }

    @Test
    void everyToothStandsWhereItsNumberPutsIt() {
        // π·1 mm to a femtometre; 20 000 teeth on, one rounding of a double and no sum of errors.
        RowShape row = new RowShape(Side.BASE, ToothForm.of(BasicRack.A, Math.PI), 3_141_592_653_590L, 20_001, 5, 0);
        assertEquals(62_831.8530718, row.toothMm(20_000), 1e-11);
        List<Corner> corners = row.outline().corners();
        assertTrue(corners.stream().anyMatch(c -> Math.abs(c.x() - (62_831.8530718 + row.form().tipLandMm() / 2)) < 1e-10));
    }

    @Test
    void aRiderToothStandsInTheMiddleOfTheGap() {
        ToothForm form = ToothForm.of(BasicRack.A, 5);
        RowShape base = row(Side.BASE, form, 10, 4);
        RowShape rider = row(Side.RIDER, form, 4, 4);
        assertEquals(base.gapMm(3), rider.toothMm(3), 0);
        assertEquals(-2.5, base.startMm());
        assertEquals(0, rider.startMm());
    }

    @Test
    void thePolygonKeepsWithinItsSag() {
        Outline outline = row(Side.BASE, ToothForm.of(BasicRack.A, 5).eased(0.2, 0, 0.5), 5, 4).outline();
        double arcs = 5 * 2 * (0.38 * MODULE * Math.toRadians(70) + 0.304 * Math.toRadians(70) + 0.25 * Math.PI);
        double[] polygon = {0};
        List<Point> points = outline.polygon(0.002);
        for (int i = 0; i < points.size(); i++) {
            Point a = points.get(i);
            Point b = points.get((i + 1) % points.size());
            polygon[0] += (a.x() * b.y() - b.x() * a.y()) / 2;
        }
        assertEquals(outline.areaMm2(), polygon[0], arcs * 0.002);
    }
}
