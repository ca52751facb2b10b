// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import pitchstack.core.stack.Direction;

/** ISO 230-2 by hand, in micrometres: all standard deviations are √2. */
class PositioningHandTest {
    private static final double ROOT = Math.sqrt(2);
    private static final double EXACT = 1e-12;
    private static final TargetVisits FIRST = new TargetVisits(0, List.of(1.0, 3.0), List.of(-1.0, 1.0));
    private static final TargetVisits SECOND = new TargetVisits(1000, List.of(0.0, 2.0), List.of(4.0, 6.0));

    private final Positioning result = Positioning.of(List.of(FIRST, SECOND));

    @Test
    void givesTheFiguresOfEachTarget() {
        // Means 2 and 0, then 1 and 5.
        assertEquals(2, result.targets().get(0).reversalM(), EXACT);
        assertEquals(-4, result.targets().get(1).reversalM(), EXACT);
        assertEquals(4 * ROOT + 2, result.targets().get(0).repeatabilityM(), EXACT);
        assertEquals(4 * ROOT + 4, result.targets().get(1).repeatabilityM(), EXACT);
        assertEquals(ROOT, result.targets().get(0).up().orElseThrow().deviationM(), EXACT);
    }

    @Test
    void givesTheFiguresOfBothDirections() {
        TwoWayFigures both = result.both().orElseThrow();
        assertEquals(4, both.reversalM(), EXACT);
        assertEquals(-1, both.meanReversalM(), EXACT);
        assertEquals(4 * ROOT + 4, both.repeatabilityM(), EXACT);
        assertEquals(5, both.errorM(), EXACT);
        assertEquals(2, both.meanErrorM(), EXACT);
        // From 0 − 2√2 to 5 + 2√2.
        assertEquals(5 + 4 * ROOT, both.accuracyM(), EXACT);
    }

    @Test
    void givesTheFiguresOfEachDirection() {
        OneWayFigures up = result.up().orElseThrow();
        OneWayFigures down = result.down().orElseThrow();
        assertEquals(1, up.errorM(), EXACT);
        assertEquals(5, down.errorM(), EXACT);
        assertEquals(1 + 4 * ROOT, up.accuracyM(), EXACT);
        assertEquals(5 + 4 * ROOT, down.accuracyM(), EXACT);
        assertEquals(4 * ROOT, up.repeatabilityM(), EXACT);
        assertEquals(4 * ROOT, down.repeatabilityM(), EXACT);
    }

    @Test
    void gathersVisitsByTargetInAnyOrder() {
        List<Visit> visits = new ArrayList<>();
        for (TargetVisits target : List.of(SECOND, FIRST)) {
            target.downM().forEach(x -> visits.add(new Visit(target.targetM(), x, Direction.BACK)));
            target.upM().forEach(x -> visits.add(new Visit(target.targetM(), x, Direction.FORWARD)));
        }
        assertEquals(List.of(FIRST, SECOND), TargetVisits.gather(visits));
        assertThrows(IllegalArgumentException.class,
                () -> TargetVisits.gather(List.of(new Visit(0, 1, Direction.UNKNOWN))));
    }

    @Test
    void evaluatesOneDirectionAloneWhereTheOtherWasNotVisited() {
        Positioning up = Positioning.of(List.of(new TargetVisits(0, FIRST.upM(), List.of()),
                new TargetVisits(1000, SECOND.upM(), SECOND.downM())));
        assertEquals(result.up(), up.up());
        assertTrue(up.down().isEmpty());
        assertTrue(up.both().isEmpty());
        assertFalse(up.targets().get(0).isTwoWay());
    }

    @Test
    void refusesATargetWithoutASpread() {
        assertThrows(IllegalArgumentException.class,
                () -> Positioning.of(List.of(new TargetVisits(0, List.of(1.0), List.of(1.0, 2.0)))));
        assertThrows(IllegalArgumentException.class,
                () -> Positioning.of(List.of(new TargetVisits(0, List.of(), List.of()))));
        assertThrows(IllegalArgumentException.class, () -> Positioning.of(List.of()));
    }
}
