// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.IndexErrors;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.RotaryScale;

/** Stacks by chance with one row much longer than the others, so that most of the travel lies far from its ends. */
final class RandomRacks {
    private final Random random;

    RandomRacks(long seed) {
        this.random = new Random(seed);
    }

    AxisSpec axis() {
        long turn = oneIn(4) ? RotaryScale.ARC_SECONDS : 0;
        long unit = turn > 0 ? turn / (20 + random.nextInt(40)) : oneIn(4) ? 1_000_003L : oneIn(3) ? 37 : 1;
        List<StageSpec> stages = new ArrayList<>();
        int fine = random.nextInt(3);
        for (int j = 0; j < fine; j++) {
            stages.add(stage(1 + random.nextInt(6), 1 + random.nextInt(4), unit));
        }
        stages.add(random.nextInt(fine + 1), stage(15 + random.nextInt(50), 1 + random.nextInt(8), unit));
        List<ShiftLimit> limits = new ArrayList<>();
        while (oneIn(3)) {
            int lowest = random.nextInt(stages.size());
            limits.add(new ShiftLimit(lowest, lowest + random.nextInt(stages.size() - lowest),
                    random.nextInt(60) * unit));
        }
        return new AxisSpec("random", turn > 0 ? new RotaryScale(turn) : new LinearScale(LengthUnit.MM), stages,
                (random.nextInt(41) - 20) * unit, stop(unit, turn), stop(unit, turn), limits, 0, OptionalLong.empty());
    }

    private StageSpec stage(int baseTeeth, int riderTeeth, long unit) {
        long pitch = pitch(unit);
        RowPair rows = new RowPair(row(baseTeeth), row(riderTeeth), random.nextInt(13) - 5,
                1 + random.nextInt(Math.min(baseTeeth, riderTeeth)));
        return new StageSpec("s", Source.PRINTED, pitch, pitch, rows, new EffortCost(2, 1),
                oneIn(3) ? errors(rows.meeting(), (pitch - 1) / 2) : IndexErrors.NONE);
    }

    /** Round, a little off, or as a fit in ppm or another temperature leaves it. */
    private long pitch(long unit) {
        long pitch = unit * (1 + random.nextInt(12));
        return oneIn(4) ? pitch + random.nextInt(3) : oneIn(6) ? pitch + pitch / 997 : pitch;
    }

    /** Errors of all or some indices: of any size, as small as they are in life, or the largest there may be. */
    private IndexErrors errors(IndexRange indices, long most) {
        SortedMap<Integer, Long> errors = new TreeMap<>();
        long largest = oneIn(2) ? most : Math.min(most, 1 + most / 20);
        int one = 1 + random.nextInt(3);
        for (int n = indices.first(); n <= indices.last(); n++) {
            if (oneIn(one)) {
                errors.put(n, oneIn(8) ? most * (random.nextInt(3) - 1) : below(2 * largest + 1) - largest);
            }
        }
        return IndexErrors.of(errors);
    }

    private RowSpec row(int teeth) {
        List<WornRange> marks = new ArrayList<>();
        while (oneIn(3)) {
            int first = random.nextInt(teeth);
            marks.add(new WornRange(new ToothSpan(first, first + random.nextInt(oneIn(3) ? 12 : 3)),
                    oneIn(2) ? Wear.WORN : Wear.BARRED));
        }
        return new RowSpec(teeth, marks);
    }

    private OptionalLong stop(long unit, long turn) {
        return !oneIn(4) ? OptionalLong.empty() : OptionalLong.of(turn > 0
                ? (long) (random.nextDouble() * 3 * turn) - turn : (random.nextInt(301) - 150) * unit);
    }

    long tolerance(AxisSpec axis) {
        long pitch = axis.stages().get(random.nextInt(axis.stages().size())).pitch();
        return switch (random.nextInt(6)) {
            case 0 -> 0;
            case 1 -> 1 + random.nextInt(3);
            case 2 -> pitch / 2;
            case 3 -> oneIn(10) ? Long.MAX_VALUE : random.nextInt(4) * pitch;
            default -> pitch / (1 + random.nextInt(8));
        };
    }

    long step(AxisSpec axis) {
        long pitch = axis.stages().get(random.nextInt(axis.stages().size())).pitch();
        return 1 + switch (random.nextInt(5)) {
            case 0 -> random.nextInt(3);
            case 1 -> pitch;
            case 2 -> pitch / (15 + random.nextInt(50));
            default -> pitch / (1 + random.nextInt(20));
        };
    }

    long below(long bound) {
        return Math.floorMod(random.nextLong(), Math.max(1, bound));
    }

    boolean oneIn(int n) {
        return random.nextInt(n) == 0;
    }
}
