// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexErrors;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;

/**
 * The problems measured: a rack, and pairs of printed stages of which the upper counts backwards, tied to a net shift.
 * The rack costs 4 s to release, a printed stage 2 s, every tooth 1 s. Lengths are femtometres.
 */
public enum Problem {
    /** 2.54 mm × 1000 and 5/4.9 mm × 20 each, net shift 15 mm: 115 fine combinations. */
    A("2.54 mm", 1000, 20, "15 mm", List.of("5 mm", "4.9 mm")),
    /** π mm × 3000 and 5/4.9 mm and 3.3/3.29 mm × 20 each, net shift 15 mm. */
    B("module 1", 3000, 20, "15 mm", List.of("5 mm", "4.9 mm", "3.3 mm", "3.29 mm")),
    /** π/2 mm × 20 000 and 5/4.9 mm, 3.3/3.29 mm and 4/3.999 mm × 40 each, net shift 6 mm. */
    C("module 0.5", 20_000, 40, "6 mm", List.of("5 mm", "4.9 mm", "3.3 mm", "3.29 mm", "4 mm", "3.999 mm"));

    /** The tolerance of every target: 10 µm. */
    public static final long TOLERANCE = 10_000_000_000L;
    /** The travel mapped and planned in: 2 m. */
    public static final long TRAVEL = 2_000_000_000_000_000L;
    private static final long SEED = 2_540;

    /** What a problem is made of. */
    private final Pairs pairs;

    Problem(String rackPitch, int rackPositions, int positions, String shift, List<String> pitches) {
        this.pairs = new Pairs(rackPitch, rackPositions, positions, shift, pitches);
    }

    /** What the problem is made of, to be varied. */
    Pairs pairs() {
        return pairs;
    }

    /** The axis with stops at the ends of the travel. */
    public AxisSpec axis() {
        return pairs.axis(name(), TRAVEL, List.of());
    }

    /** The same with a measured error of every rack tooth, by chance but the same on every run, up to 20 µm. */
    public AxisSpec measuredAxis() {
        Random random = new Random(SEED + 2);
        AxisSpec axis = axis();
        StageSpec rack = axis.stages().get(0);
        IndexRange range = rack.rows().indices();
        TreeMap<Integer, Long> errors = new TreeMap<>();
        for (int n = range.first(); n <= range.last(); n++) {
            errors.put(n, random.nextLong(-2 * TOLERANCE, 2 * TOLERANCE + 1));
        }
        return axis.withStage(0, rack.withErrors(IndexErrors.of(errors)));
    }

    /** The same with a worn, a barred and a long worn stretch of rack teeth. */
    public AxisSpec wornAxis() {
        return pairs.axis(name(), TRAVEL, List.of(new WornRange(new ToothSpan(100, 110), Wear.WORN),
                new WornRange(new ToothSpan(300, 302), Wear.BARRED),
                new WornRange(new ToothSpan(400, 499), Wear.WORN)));
    }
}
