// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.places;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.NavigableSet;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import pitchstack.core.plan.Planner;
import pitchstack.core.stack.Setting;
import pitchstack.ui.editor.places.Dots;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.ReachWalk;

class ReachWalkTest {
    private static final long COARSE = 5_000_000_000_000L;
    private static final long FINE = 4_900_000_000_000L;

    /** 20 base teeth under 10 rider teeth that must all be engaged, from tooth 5 on: −5 to 5 on both stages. */
    private static final Planner PLANNER = Planner.of(Specs.axis(0, Specs.stage(COARSE, 20, 10, 5, 10),
            Specs.stage(FINE, 20, 10, 5, 10)));

    /** Every position from a setting, as offsets: 5 mm times one index and 4.9 mm times the other, all tried. */
    private static NavigableSet<Long> all(Setting from) {
        NavigableSet<Long> offsets = new TreeSet<>();
        for (int i = -5; i <= 5; i++) {
            for (int j = -5; j <= 5; j++) {
                offsets.add((i - from.index(0)) * COARSE + (j - from.index(1)) * FINE);
            }
        }
        offsets.remove(0L);
        return offsets;
    }

    private static Dots walk(Setting from, long apart, double low, double high) {
        return new ReachWalk(PLANNER, from, apart, () -> false).within(new Extent(low, high));
    }

    @Test
    void findsEveryPositionWhereThereIsRoomForAll() {
        Dots dots = walk(Setting.of(0, 0), 1, -60 * Specs.MM, 60 * Specs.MM);
        assertArrayEquals(all(Setting.of(0, 0)).stream().mapToLong(Long::longValue).toArray(), dots.offsets());
        assertFalse(dots.thinned());
        assertFalse(dots.ended());
    }

    /** Fuzzed against trying every setting: marks are in reach and apart, and nothing that has room is left out. */
    @Test
    void leavesOutOnlyWhatIsTooNearToAnotherMark() {
        long seed = 23;
        Random random = new Random(seed);
        for (int round = 0; round < 300; round++) {
            String which = "seed " + seed + ", round " + round;
            Setting from = Setting.of(random.nextInt(11) - 5, random.nextInt(11) - 5);
            long apart = 1 + (long) (random.nextDouble() * 3 * Specs.MM);
            double low = (random.nextDouble() - 0.6) * 80 * Specs.MM;
            double high = low + random.nextDouble() * 80 * Specs.MM;
            Dots dots = walk(from, apart, low, high);
            NavigableSet<Long> all = all(from);
            NavigableSet<Long> marked = new TreeSet<>();
            for (long dot : dots.offsets()) {
                assertTrue(all.contains(dot) && dot >= low && dot <= high, which);
                Long before = marked.floor(dot);
                assertTrue(before == null || dot - before >= apart, which);
                assertTrue(Math.abs(dot) >= apart, which + ": beside the pointer");
                marked.add(dot);
            }
            NavigableSet<Long> seen = new TreeSet<>(all.tailSet((long) Math.ceil(low), true).headSet((long) high, true));
            for (long position : seen) {
                boolean near = Math.abs(position) < apart || !marked.subSet(position - apart + 1, position + apart).isEmpty();
                assertTrue(near, which + ": " + position + " has room and is left out");
            }
            assertEquals(!seen.equals(marked), dots.thinned(), which);
        }
    }

    @Test
    void saysThatItWasEnded() {
        Dots dots = new ReachWalk(PLANNER, Setting.of(0, 0), 1, () -> true).within(new Extent(-1e14, 1e14));
        assertEquals(0, dots.offsets().length);
        assertTrue(dots.ended());
    }
}
