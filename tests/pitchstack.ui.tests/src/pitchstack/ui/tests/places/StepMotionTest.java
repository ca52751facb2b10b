// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.places;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import pitchstack.core.plan.Step;
import pitchstack.ui.editor.places.StepMotion;
import pitchstack.ui.editor.places.StepMotion.Phase;

class StepMotionTest {
    private final StepMotion motion = new StepMotion(new Step(0, 4, -6));

    @Test
    void liftsThenMovesThenSeats() {
        assertEquals(Phase.LIFT, motion.phase(0));
        assertEquals(Phase.SEAT, motion.phase(motion.durationMs()));
        assertEquals(0, motion.lift(0));
        assertEquals(0, motion.lift(motion.durationMs()));
        for (int ms = 0; ms <= motion.durationMs(); ms++) {
            boolean away = motion.index(ms) != 4 && motion.index(ms) != -6;
            assertTrue(!away || motion.lift(ms) == 1, "between its places it is out of the teeth, at " + ms + " ms");
        }
    }

    @Test
    void passesEveryToothOnTheWay() {
        int index = 4;
        for (int ms = 0; ms <= motion.durationMs(); ms++) {
            int now = motion.index(ms);
            assertTrue(now == index || now == index - 1, "from " + index + " to " + now);
            index = now;
        }
        assertEquals(-6, index);
    }

    @Test
    void countsALongRackWithinAFewSeconds() {
        assertTrue(new StepMotion(new Step(0, 0, 20_000)).durationMs() < 5000);
    }
}
