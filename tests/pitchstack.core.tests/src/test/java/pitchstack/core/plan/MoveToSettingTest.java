// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.Wear;

/** The move to a setting that is given, against every way of making it tried out. */
final class MoveToSettingTest {
    private static final long SEED = 41_017;
    private static final int STACKS = 3_000;

    @Test
    void agreesWithEveryWayTriedOut() {
        int made = 0;
        int refused = 0;
        for (int i = 0; i < STACKS; i++) {
            RandomStacks stacks = new RandomStacks(SEED + i);
            AxisSpec axis = stacks.measuredAxis();
            PlanRequest request = stacks.request(axis);
            Planner planner = Planner.of(axis);
            BruteForceMoves moves = new BruteForceMoves(axis, request.from(), request.last());
            for (int[] to : new BruteForce(axis).within(request.target(), Long.MAX_VALUE / 4, Wear.BARRED)) {
                Optional<PlannedSetting> move = planner.move(Setting.of(to), request.target(), request.from(), request.last());
                boolean possible = axis.wearAt(Setting.of(to)) != Wear.BARRED && moves.steps(to).isPresent();
                assertEquals(possible, move.isPresent(), "seed " + (SEED + i) + " to " + List.of(Setting.of(to)));
                if (possible) {
                    assertEquals(moves.steps(to).get(), move.get().steps());
                    assertEquals(moves.effort(to), move.get().effortMs());
                    made++;
                } else {
                    refused++;
                }
            }
        }
        assertTrue(made > STACKS && refused > STACKS / 10, made + " moves, " + refused + " refused");
    }

    @Test
    void refusesSettingsOfAnotherNumberOfStages() {
        AxisSpec axis = new RandomStacks(SEED).axis();
        int stages = axis.stages().size();
        assertThrows(IllegalArgumentException.class, () -> Planner.of(axis).move(Setting.zero(stages + 1), 0,
                Setting.zero(stages), Directions.unknown(stages)));
    }
}
