// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchstack.core.accuracy.Watch;
import pitchstack.core.accuracy.material.Elasticity;
import pitchstack.core.accuracy.material.Material;

/**
 * A joint of 20 teeth of ISO 53, type A, module 1 mm, 10 mm wide, of a plastic of 2000 MPa and ν = 0.35 both.
 *
 * <p>By hand, with the published forms of a tapered beam loaded at the pitch line, its ground left out: k/(E·b) is
 * 0.364133, so 7282.66 N/mm of one tooth across, half of that of two, and 1/cos² 20° of that along the normal: 4123.72
 * N/mm. At t = 0 the law gives half of the flanks at F = 0.398942·N·k·σ·sin 2α and √V = 1.167639.
 */
class JointTest {
    private static final Elasticity PLASTIC = new Elasticity(2e9, 0.35);
    private static final ToothForm FORM = ToothForm.basicRack(1e-3, 10e-3);
    private static final double SCATTER = 30e-6;
    private static final double K = 0.364133 * 2e9 * 10e-3 / 2 / Math.pow(Math.cos(Math.toRadians(20)), 2);
    private static final double HALF_N = 0.398942 * 20 * K * SCATTER * Math.sin(Math.toRadians(40));

    private final Joint joint = new Joint(ToothPair.alike(FORM, PLASTIC, false), ToothVariant.SOLID, 20, 20, SCATTER,
            0);

    @Test
    void bringsHalfOfTheFlanksToBearWhereTheLawSays() {
        Joint.Held held = joint.at(HALF_N);
        assertEquals(0.5, held.bearingShare(), 1e-5);
        assertEquals(SCATTER / Math.sqrt(40) * 1.167639, held.spreadM(), 1e-10);
        assertEquals(2 * 0.5 * 20 * K * Math.pow(Math.cos(Math.toRadians(20)), 2), held.travelStiffnessNPerM(), 100);
    }

    /** A beam of 2.480722 m at the root and 1.25 m high: 6·1.25/2.480722² = 1.218727 for each F/(b·m). */
    @Test
    void sharesTheForceOutOverTheTeethThatBear() {
        double across = HALF_N / (2 * 20 * 0.5 * Math.tan(Math.toRadians(20)));
        assertEquals(across * 1.218727 / (10e-3 * 1e-3), joint.at(HALF_N).rootStressPa(), 1e4);
    }

    @Test
    void averagesLikeFewerTeethWhereNeighboursHangTogether() {
        Joint tied = new Joint(joint.pair(), ToothVariant.SOLID, 20, 5, SCATTER, 0);
        assertEquals(joint.at(HALF_N).bearingShare(), tied.at(HALF_N).bearingShare(), 1e-12);
        assertEquals(2 * joint.at(HALF_N).spreadM(), tied.at(HALF_N).spreadM(), 1e-12);
    }

    /** A steel mate hardly gives way: the plastic alone, in series with 104 times that. */
    @Test
    void leavesAMetalMateSolid() {
        ToothPair pair = new ToothPair(FORM, new ToothPair.Part(Material.STEEL.elasticity(), false),
                new ToothPair.Part(PLASTIC, true), false);
        ToothVariant slotted = new ToothVariant(0.4e-3, true, 0);
        assertTrue(pair.flankNPerM(ToothVariant.SOLID) > 1.9 * joint.pair().flankNPerM(ToothVariant.SOLID));
        double soft = pair.flankNPerM(ToothVariant.SOLID) / pair.flankNPerM(slotted);
        double both = joint.pair().flankNPerM(ToothVariant.SOLID) / joint.pair().flankNPerM(slotted);
        assertEquals(both, soft, 0.05 * both, "the slotted tooth rules both");
        assertEquals(joint.pair().rootStressPaPerN(slotted), pair.rootStressPaPerN(slotted), 1e-6);
    }

    /**
     * The law is for many teeth: the spread of 20 is within 2 % of it, where chance is a quarter of a per cent, and as
     * teeth are whole, half of one more or less may bear: 2.5 %.
     */
    @Test
    void agreesWithRowsDrawnByChance() {
        SimulatedSeats found = SeatSimulation.run(joint.seating(HALF_N, 0), 100_000, 7, Watch.NONE).orElseThrow();
        assertEquals(1, found.spreadM() / joint.at(HALF_N).spreadM(), 0.025);
        assertEquals(0.5, found.bearingShare(), 0.026);
    }

    @Test
    void comparesVariantsAgainstTheirMateAsAgainstOneAlike() {
        List<ToothVariant> variants = List.of(ToothVariant.SOLID, new ToothVariant(0.4e-3, true, 0), new ToothVariant(0,
                false, 1e-3));
        assertEquals(VariantRow.compare(FORM, PLASTIC, 20, SCATTER, false, variants),
                VariantRow.compare(joint.pair(), 20, SCATTER, variants));
    }
}
