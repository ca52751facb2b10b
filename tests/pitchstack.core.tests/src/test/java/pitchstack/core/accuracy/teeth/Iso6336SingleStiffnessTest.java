// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import pitchstack.core.accuracy.material.Elasticity;

/**
 * An upper cross-check of the stiffness of steel teeth: the single stiffness of ISO 6336-1, in the form that public programs
 * quote (the standard's text was not at hand), for unshifted teeth. q′ is in mm·µm/N, c′ in N/(mm·µm) for each millimetre of
 * face width, along the line of action.
 */
class Iso6336SingleStiffnessTest {
    private static final Elasticity STEEL = new Elasticity(206e9, 0.3);

    private static double minimumFlexibility(double perToothOne, double perToothTwo) {
        return 0.04723 + 0.15551 * perToothOne + 0.25791 * perToothTwo;
    }

    /** c′ of solid blanks, type A of ISO 53: measured gears are at 0.8 of theory, and the basic rack counts 0.975. */
    private static double singleStiffness(double flexibility) {
        double basicRack = (1 + 0.5 * (1.2 - 1.25)) * (1 - 0.02 * (20 - 20));
        return 0.8 * basicRack / flexibility;
    }

    /** Steel racks of type A against each other, at the pitch line, along the flank's normal: N/(mm·µm) each mm of width. */
    private static double ours(boolean withBase) {
        ToothForm form = ToothForm.basicRack(2e-3, 1e-3);
        ToothCompliance tooth = ToothCompliance.of(form, ToothVariant.SOLID, STEEL, form.dedendumM(), withBase);
        return tooth.flankNPerM(tooth, form.flankAngleRad()) * 1e-6;
    }

    @Test
    void theFormulaGivesItsPublishedFigures() {
        assertEquals(0.059304, minimumFlexibility(1 / 20.0, 1 / 60.0), 5e-7);
        assertEquals(16.86227, 1 / minimumFlexibility(1 / 20.0, 1 / 60.0), 5e-5);
        assertEquals(21.1730, 1 / minimumFlexibility(0, 0), 5e-5);
        assertEquals(16.5149, singleStiffness(minimumFlexibility(0, 0)), 5e-5);
    }

    @Test
    void racksWithTheirGroundLieBetweenTheStandardsTheoryAndItsPractice() {
        assertTrue(ours(true) < 1 / minimumFlexibility(0, 0), ours(true) + " N/(mm·µm)");
        assertTrue(ours(true) > singleStiffness(minimumFlexibility(0, 0)), ours(true) + " N/(mm·µm)");
    }

    @Test
    void withoutTheirGroundTheyWouldBeStifferThanTheoryAllows() {
        assertTrue(ours(false) > 1 / minimumFlexibility(0, 0), ours(false) + " N/(mm·µm)");
    }
}
