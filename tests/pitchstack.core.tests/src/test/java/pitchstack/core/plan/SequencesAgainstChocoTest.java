// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pitchstack.core.plan.SequenceAnswer.Planned;
import pitchstack.core.stack.Approach;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;

/** Differentials of two and three stages, as a general-purpose solver plans their lists. */
class SequencesAgainstChocoTest {
    private static final int LISTS = 40;

    @ParameterizedTest
    @EnumSource(names = {"GIVEN", "FREE"})
    void agreesOnTheLeastEffort(StopOrder order) {
        long fresh = System.nanoTime();
        int planned = 0;
        for (int i = 0; i < LISTS; i++) {
            long seed = i % 2 == 0 ? i : fresh + i;
            Random random = new Random(seed);
            AxisSpec axis = axis(random);
            SequenceRequest request = list(random, axis, order);
            Planned plan = (Planned) Sequences.plan(Planner.of(axis), request, Progress.NONE);
            long least = new ChocoSequence(axis, request).least();
            assertEquals(least, plan.leftOut() > 0 ? -1 : plan.effortMs(), "seed " + seed + "\n" + axis + "\n" + request);
            planned += least > 0 ? 1 : 0;
        }
        assertTrue(planned > LISTS / 3, "only " + planned + " lists could be planned");
    }

    /** A rack and one or two pitches close to its own, barred here and there. */
    private static AxisSpec axis(Random random) {
        List<StageSpec> stages = new ArrayList<>();
        int pitch = 10 + random.nextInt(40);
        stages.add(stage(random, pitch, 24));
        for (int j = random.nextInt(2); j >= 0; j--) {
            stages.add(stage(random, Math.max(1, pitch - 1 - random.nextInt(4)), 7));
        }
        return new AxisSpec("a", new LinearScale(LengthUnit.MM), stages, random.nextInt(20), OptionalLong.empty(),
                OptionalLong.empty(), List.of(), Approach.values()[random.nextInt(3)], 0, OptionalLong.empty());
    }

    private static StageSpec stage(Random random, int pitch, int indices) {
        List<WornRange> worn = random.nextInt(3) > 0 ? List.of()
                : List.of(new WornRange(new ToothSpan(3, 4), Wear.BARRED));
        // One rider tooth, so that the base teeth are the indices.
        RowPair rows = new RowPair(new RowSpec(indices, worn), new RowSpec(1, List.of()), indices / 2, 1);
        return new StageSpec("s", Source.PRINTED, pitch, pitch, rows,
                new EffortCost(random.nextInt(5), 1 + random.nextInt(3)));
    }

    private static SequenceRequest list(Random random, AxisSpec axis, StopOrder order) {
        List<Stop> stops = new ArrayList<>();
        int pitch = (int) axis.stages().get(0).pitch();
        for (int i = order == StopOrder.FREE ? 3 : 2 + random.nextInt(3); i > 0; i--) {
            stops.add(new Stop("", axis.datum() + random.nextInt(16 * pitch) - 8 * pitch, random.nextInt(pitch / 4 + 2)));
        }
        // Worn teeth count as good here: the solver knows only what may be used.
        return new SequenceRequest(stops, Setting.zero(axis.stages().size()), Directions.unknown(axis.stages().size()),
                WornPolicy.ALLOW, order, SequenceRequest.DEFAULT_MEMORY);
    }
}
