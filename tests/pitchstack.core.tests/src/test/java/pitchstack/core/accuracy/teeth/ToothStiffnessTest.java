// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pitchstack.core.accuracy.material.Elasticity;

/** Tooth stiffness against figures worked out apart from this program, closed forms, and direct integration of the beam. */
class ToothStiffnessTest {
    /** E = 1, b = 1, as the figures are for δ·E·b/P. */
    private static final Elasticity UNIT = new Elasticity(1, 0.35);
    private static final ToothForm RACK = ToothForm.basicRack(1, 1);
    private static final double TIP = 2.25;

    private static ToothCompliance pitchLine(ToothVariant variant, boolean base) {
        return ToothCompliance.of(RACK, variant, UNIT, RACK.dedendumM(), base);
    }

    /** ISO 53 type A in modules: root 2.480722, half depth 1.570796, tip 0.842856, area 3.739025. */
    @Test
    void theBasicRackHasItsThicknesses() {
        assertEquals(2.480722, RACK.thicknessM(0), 6e-7);
        assertEquals(Math.PI / 2, RACK.thicknessM(1.25), 1e-12);
        assertEquals(0.842856, RACK.thicknessM(TIP), 6e-7);
        assertEquals(3.739025, RACK.areaM2(), 6e-7);
    }

    @Test
    void theBasicRackLoadedAtThePitchLine() {
        ToothCompliance tooth = pitchLine(ToothVariant.SOLID, false);
        assertEquals(0.712333, tooth.bendingMPerN(), 6e-7);
        assertEquals(2.033920, tooth.shearMPerN(), 6e-7);
        assertEquals(0.364133, tooth.stiffnessNPerM(), 6e-7);
    }

    @Test
    void theBasicRackLoadedAtTheTip() {
        ToothCompliance tooth = ToothCompliance.of(RACK, ToothVariant.SOLID, UNIT, TIP, false);
        // The figure was worked out from thicknesses rounded to six decimals.
        assertEquals(6.262797, tooth.bendingMPerN(), 5e-6);
        assertEquals(4.804800, tooth.shearMPerN(), 5e-6);
        assertEquals(0.090354, tooth.stiffnessNPerM(), 6e-7);
    }

    /** 4h³/t³ = 13.5 and 1.2·2(1 + ν)·h/t = 4.86. */
    @Test
    void aRectangleIsThePlainCantilever() {
        Beam beam = new Beam(3, 2, 2, 1);
        assertEquals(13.5, beam.bendingMPerN(UNIT), 1e-12);
        assertEquals(4.86, beam.shearMPerN(UNIT), 1e-12);
        assertEquals(6.0 * 3 / 4, beam.stressPaPerN(), 1e-12);
    }

    /** By hand: 5.306·(1.25/2.480722)² + 1.3·(1.25/2.480722) + 1.534·(1 + 0.4167·tan² 20°/1.35) = 3.59901. */
    @Test
    void theGroundGivesWayAsMuchAsTheTooth() {
        assertEquals(3.59901, pitchLine(ToothVariant.SOLID, true).baseMPerN(), 1e-4);
        assertEquals(0, pitchLine(ToothVariant.SOLID, false).baseMPerN());
        // Along the normal of the flank, with the ground turned by cos² α: 0.168798.
        double turned = pitchLine(ToothVariant.SOLID, true).baseMPerN() * Math.pow(Math.cos(Math.toRadians(20)), 2);
        assertEquals(0.168798, 1 / (0.712333 + 2.033920 + turned), 1e-6);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 0.9999999, 0.999, 0.951, 0.949, 0.9, 0.5, 0.1, 0.02})
    void agreesWithDirectIntegrationOverTheTaper(double ratio) {
        double h = 1.7;
        double root = 2.2;
        Beam beam = new Beam(h, root, ratio * root, 1);
        DoubleUnaryOperator thickness = y -> ratio * root + (1 - ratio) * root * y / h;
        double bending = integral(y -> 12 * y * y / Math.pow(thickness.applyAsDouble(y), 3), h);
        double shear = integral(y -> 1.2 * 2 * 1.35 / thickness.applyAsDouble(y), h);
        assertEquals(bending, beam.bendingMPerN(UNIT), 1e-8 * bending);
        assertEquals(shear, beam.shearMPerN(UNIT), 1e-8 * shear);
    }

    /** Simpson's rule from 0 on, fine enough for ten digits. */
    private static double integral(DoubleUnaryOperator of, double to) {
        int steps = 20_000;
        double sum = of.applyAsDouble(0) + of.applyAsDouble(to);
        for (int i = 1; i < steps; i++) {
            sum += (i % 2 == 1 ? 4 : 2) * of.applyAsDouble(to * i / steps);
        }
        return sum * to / steps / 3;
    }

    /** E = 2000 MPa and 10 mm wide: 7283 N/mm, whatever the module. */
    @Test
    void stiffnessDoesNotDependOnTheModule() {
        Elasticity plastic = new Elasticity(2e9, 0.35);
        for (double module : new double[] {0.5e-3, 1e-3, 3e-3}) {
            ToothForm form = ToothForm.basicRack(module, 10e-3);
            assertEquals(7283e3, ToothCompliance.of(form, ToothVariant.SOLID, plastic, form.dedendumM(), false)
                    .stiffnessNPerM(), 1e3);
        }
    }

    /** Parallel sides, bending alone: both leaves share (1 − w/t)³/4, one bears (1 − w/t)³/8. */
    @ParameterizedTest
    @CsvSource({"0.1,0.1823,0.0911", "0.2,0.128,0.0640", "0.3,0.0857,0.0429"})
    void aSlotLeavesTwoLeaves(double width, double shared, double single) {
        ToothForm straight = new ToothForm(2, 0, 1, 1, 1);
        double solid = ToothCompliance.of(straight, ToothVariant.SOLID, UNIT, 1, false).bendingMPerN();
        assertEquals(shared, solid / ToothCompliance.of(straight, new ToothVariant(width, false, 0), UNIT, 1, false)
                .bendingMPerN(), 6e-5);
        assertEquals(single, solid / ToothCompliance.of(straight, new ToothVariant(width, true, 0), UNIT, 1, false)
                .bendingMPerN(), 6e-5);
    }

    /** Section moduli: two leaves of (t − w)/2 bear 2/(1 − w/t)² of the stress of the solid tooth, one twice that. */
    @Test
    void aSlotCostsStrength() {
        ToothForm straight = new ToothForm(2, 0, 1, 1, 1);
        double solid = ToothCompliance.of(straight, ToothVariant.SOLID, UNIT, 1, false).rootStressPaPerN();
        assertEquals(6, solid, 1e-12);
        assertEquals(6 * 2 / 0.64, ToothCompliance.of(straight, new ToothVariant(0.2, false, 0), UNIT, 1, false)
                .rootStressPaPerN(), 1e-12);
        assertEquals(6 * 4 / 0.64, ToothCompliance.of(straight, new ToothVariant(0.2, true, 0), UNIT, 1, false)
                .rootStressPaPerN(), 1e-12);
    }

    /** Parallel sides of 2.480722, depth 1.25 times the factor: 4(h/t)³ + 1.2·2.7·h/t, over it. */
    @ParameterizedTest
    @CsvSource({"1,0.46634", "1.25,0.32892", "1.5,0.23946", "2,0.13589"})
    void aDeeperWellSoftens(double factor, double stiffness) {
        ToothForm straight = new ToothForm(2 * 2.480722, 0, 1, 1.25, 1);
        double well = 1.25 * (factor - 1);
        assertEquals(stiffness, ToothCompliance.of(straight, new ToothVariant(0, false, well), UNIT, 1.25, false)
                .stiffnessNPerM(), 6e-6);
    }

    /** The stress rises with the lever: under a taper the deepest section of the well counts. */
    @Test
    void aDeeperWellCostsStrength() {
        double root = RACK.thicknessM(0);
        assertEquals(6 * 2.25 / (root * root), pitchLine(new ToothVariant(0, false, 1), false).rootStressPaPerN(), 1e-12);
        assertTrue(pitchLine(ToothVariant.SOLID, false).rootStressPaPerN() < 6 * 2.25 / (root * root));
    }

    @Test
    void twoTeethGiveWayOneAfterTheOther() {
        ToothCompliance tooth = pitchLine(ToothVariant.SOLID, false);
        assertEquals(0.364133 / 2, tooth.againstNPerM(tooth), 6e-7);
        assertEquals(0.364133 / 2 / Math.pow(Math.cos(0.3), 2), tooth.flankNPerM(tooth, 0.3), 1e-6);
    }

    @Test
    void refusesTeethThatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> new ToothForm(1, 0.5, 1, 0.1, 1));
        assertThrows(IllegalArgumentException.class, () -> new ToothVariant(0, true, 0));
        assertThrows(IllegalArgumentException.class, () -> pitchLine(new ToothVariant(1.6, false, 0), false));
        assertThrows(IllegalArgumentException.class, () -> new Beam(1, 1, 2, 1));
        assertThrows(IllegalArgumentException.class, () -> new Elasticity(0, 0.3));
    }
}
