// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.places;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;
import pitchstack.ui.editor.places.StageTravel;

class StageTravelTest {
    /** 30 base teeth of which 15 is barred, under 5 rider teeth that must all be engaged: 0 to 25 without 11 to 15. */
    private static final StageTravel BARRED = new StageTravel(new RowPair(
            new RowSpec(30, List.of(new WornRange(new ToothSpan(15, 15), Wear.BARRED))), new RowSpec(5, List.of()), 0, 5));

    @Test
    void knowsWhereAStageMayStand() {
        for (int index = -3; index < 30; index++) {
            assertEquals(index >= 0 && index <= 25 && (index < 11 || index > 15), BARRED.usable(index), "index " + index);
        }
    }

    @Test
    void passesOverBarredIndicesInTheDirectionOfTheMovement() {
        assertEquals(16, BARRED.settle(5, 11));
        assertEquals(16, BARRED.settle(5, 15));
        assertEquals(10, BARRED.settle(20, 15));
        assertEquals(20, BARRED.settle(5, 20));
    }

    @Test
    void stopsAtTheEnds() {
        assertEquals(25, BARRED.settle(5, 400));
        assertEquals(0, BARRED.settle(5, -400));
        StageTravel barredEnd = new StageTravel(new RowPair(
                new RowSpec(30, List.of(new WornRange(new ToothSpan(29, 29), Wear.BARRED))), new RowSpec(5, List.of()), 0, 5));
        assertEquals(24, barredEnd.settle(5, 400), "25 is barred and nothing lies beyond it");
    }

    @Test
    void staysWhereNothingCanBeUsed() {
        StageTravel none = new StageTravel(Specs.rows(10, 5, 0, 6));
        assertEquals(3, none.settle(3, 7));
        assertFalse(none.usable(3));
    }

    /** Against trying every index: the nearest usable one at or beyond the wanted, else the nearest before it. */
    @Test
    void settlesAsTryingEveryIndexDoes() {
        Random random = new Random(11);
        for (int round = 0; round < 3000; round++) {
            StageTravel travel = random(random);
            int from = random.nextInt(60) - 20;
            int wanted = random.nextInt(80) - 30;
            int got = travel.settle(from, wanted);
            int direction = Integer.signum(wanted - from);
            int expected = from;
            boolean beyond = false;
            for (int index = 60; index >= -60 && direction > 0; index--) {
                if (index >= wanted && travel.usable(index)) {
                    expected = index;
                    beyond = true;
                }
            }
            for (int index = -60; index <= 60 && direction < 0; index++) {
                if (index <= wanted && travel.usable(index)) {
                    expected = index;
                    beyond = true;
                }
            }
            if (beyond) {
                assertEquals(expected, got, travel + " from " + from + " to " + wanted);
            } else {
                assertTrue(got == from || travel.usable(got));
            }
        }
    }

    private static StageTravel random(Random random) {
        int first = random.nextInt(30);
        RowSpec base = new RowSpec(10 + random.nextInt(20), List.of(
                new WornRange(new ToothSpan(first, first + random.nextInt(5)), Wear.BARRED)));
        return new StageTravel(new RowPair(base, new RowSpec(3 + random.nextInt(5), List.of()), random.nextInt(9) - 4,
                1 + random.nextInt(3)));
    }
}
