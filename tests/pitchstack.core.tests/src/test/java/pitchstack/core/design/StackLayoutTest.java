// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import pitchstack.core.Stacks;
import pitchstack.core.coverage.Outcome;
import pitchstack.core.plan.Progress;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;

/** Counts are femtometres; the numbers small, so that all positions can be listed. */
final class StackLayoutTest {
    private static AxisSpec axis(StackLayout layout, long travel) {
        List<StageSpec> stages = new ArrayList<>();
        for (int j = 0; j < layout.rows().size(); j++) {
            stages.add(new StageSpec("stage", Source.PRINTED, layout.pitches().get(j), layout.pitches().get(j),
                    layout.rows().get(j), new EffortCost(0, 1)));
        }
        return new AxisSpec("axis", Stacks.LINEAR, stages, 0, OptionalLong.of(0), OptionalLong.of(travel), List.of(), 0,
                OptionalLong.empty());
    }

    /** Of the 25 indices 12 lie below 0 and 12 above: 2 · 24 teeth with 12 engaged. The rack stands 288 mm off. */
    @Test
    void makesBothRowsOfAPairAsShortAsTheyCanBe() {
        StackLayout layout = StackLayout.open(96_000, 250, List.of(new FineStage(240, 25)));
        RowPair pair = layout.rows().get(1);
        assertEquals(List.of(24, 24, 12), List.of(pair.base().teeth(), pair.rider().teeth(), pair.minimumEngaged()));
        // 12 · 240 = 2880 to either side are 11.52 rack teeth, rounded up 12; 98 880 are 395.52, rounded up 396.
        assertEquals(new IndexRange(-12, 396), layout.rows().get(0).indices());
        assertTrue(layout.rows().get(0).start() >= 0);
    }

    @Test
    void reachesTheWholeTravelInStepsNoWiderThanWanted() {
        long seed = new Random().nextLong();
        Random random = new Random(seed);
        int proven = 0;
        for (int i = 0; i < 300; i++) {
            long rack = 100 + random.nextInt(400);
            long step = 5 + random.nextInt(80);
            long travel = random.nextInt(3000) + 1;
            var stages = new FineStages(rack, random.nextInt(300), Grain.of(1)).dividing(step);
            if (stages.isEmpty()) {
                continue;
            }
            String which = "seed " + seed + ", case " + i;
            AxisSpec axis = axis(StackLayout.open(travel, rack, stages.get()), travel);
            TreeSet<Long> all = positions(axis, travel);
            assertEquals(0, all.first(), which);
            assertTrue(travel - all.last() < step, which);
            long widest = 0;
            for (Long place = 0L; all.higher(place) != null; place = all.higher(place)) {
                widest = Math.max(widest, all.higher(place) - place);
            }
            assertTrue(widest <= step, which);
            Outcome<Proof> proof = Proof.of(axis, step, Progress.NONE);
            assertTrue(proof.get().holds(), which);
            assertEquals(widest, proof.get().finest().spacing(), which);
            proven++;
        }
        assertTrue(proven > 200, "most cases have an answer: " + proven);
    }

    @Test
    void doesNotProveWhatIsNotSo() {
        AxisSpec coarse = axis(StackLayout.open(3000, 500, List.of()), 3000);
        assertTrue(Proof.of(coarse, 500, Progress.NONE).get().holds());
        assertFalse(Proof.of(coarse, 499, Progress.NONE).get().holds());
    }

    /** Half a turn either way is every tooth once, and for an even number the one opposite twice. */
    @Test
    void letsAClosedRingStandOnEachOfItsTeeth() {
        // A turn of 36 000 000 counts: 100 000 and 96 000 a tooth, and 99 000, which does not go into it.
        StackLayout rings = StackLayout.closed(36_000_000, 100_000,
                List.of(new FineStage(96_000, 25), new FineStage(99_000, 7)));
        assertEquals(new IndexRange(-180, 180), rings.rows().get(0).indices());
        assertEquals(new IndexRange(-187, 187), rings.rows().get(1).indices());
        assertEquals(new IndexRange(-3, 3), rings.rows().get(2).indices(), "a sector has what it needs");
    }

    private static TreeSet<Long> positions(AxisSpec axis, long travel) {
        List<Long> sums = List.of(0L);
        for (StageSpec stage : axis.stages()) {
            TreeSet<Long> more = new TreeSet<>();
            IndexRange range = stage.rows().indices();
            for (long sum : sums) {
                for (int index = range.first(); index <= range.last(); index++) {
                    more.add(sum + index * stage.pitch());
                }
            }
            sums = List.copyOf(more);
        }
        TreeSet<Long> inside = new TreeSet<>(sums);
        return new TreeSet<>(inside.subSet(0L, true, travel, true));
    }
}
