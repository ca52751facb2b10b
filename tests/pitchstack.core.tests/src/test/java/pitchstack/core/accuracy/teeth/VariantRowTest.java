// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchstack.core.accuracy.material.Elasticity;

/** Ways to make a tooth side by side: what saves preload costs strength. */
class VariantRowTest {
    private static final ToothForm FORM = ToothForm.basicRack(5e-3 / Math.PI, 20e-3);
    private static final Elasticity PLA = new Elasticity(3e9, 0.35);
    private static final double SCATTER = 30e-6;
    private static final int TEETH = 20;
    private static final List<VariantRow> ROWS = VariantRow.compare(FORM, PLA, TEETH, SCATTER, false,
            List.of(ToothVariant.SOLID, new ToothVariant(0.5e-3, false, 0), new ToothVariant(0.5e-3, true, 0),
                    new ToothVariant(0, false, 2e-3)));

    /** 0.364133·E·b across, half of it against its mate, over cos² α; then N·k·σ·sin 2α·(tΦ + φ). */
    @Test
    void theSolidToothFollowsFromItsParts() {
        double cos = Math.cos(FORM.flankAngleRad());
        double stiffness = 0.364133 / 2 * 3e9 * 20e-3 / (cos * cos);
        VariantRow solid = ROWS.get(0);
        assertEquals(stiffness, solid.stiffnessNPerM(), 1e-5 * stiffness);
        double scale = TEETH * stiffness * SCATTER * Math.sin(2 * FORM.flankAngleRad());
        assertEquals(0.398942 * scale, solid.halfN(), 1e-4 * scale);
        assertEquals(1.083315 * scale, solid.mostN(), 1e-4 * scale);
        assertEquals(2.008491 * scale, solid.nearlyAllN(), 1e-4 * scale);
        assertEquals(OrderStatistics.meanOfHighest(40) * scale, solid.allN(), 1e-4 * scale);
    }

    /** By statics: all flanks that bear hold the preload, and the stress is that of a cantilever with this load. */
    @Test
    void theStressHoldsThePreload() {
        VariantRow solid = ROWS.get(0);
        double normal = solid.mostN() / (2 * TEETH * 0.841345 * Math.sin(FORM.flankAngleRad()));
        Beam beam = new Beam(FORM.dedendumM(), FORM.thicknessM(0), FORM.pitchM() / 2, 20e-3);
        assertEquals(normal * Math.cos(FORM.flankAngleRad()) * beam.stressPaPerN(), solid.rootStressPa(),
                1e-5 * solid.rootStressPa());
    }

    @Test
    void softerTeethNeedLessPreload() {
        assertTrue(ROWS.get(0).mostN() > ROWS.get(1).mostN());
        assertTrue(ROWS.get(1).mostN() > ROWS.get(2).mostN());
        assertTrue(ROWS.get(0).mostN() > ROWS.get(3).mostN());
        assertEquals(ROWS.get(0).mostN() / ROWS.get(0).stiffnessNPerM(), ROWS.get(2).mostN() / ROWS.get(2).stiffnessNPerM(),
                1e-12);
    }
}
