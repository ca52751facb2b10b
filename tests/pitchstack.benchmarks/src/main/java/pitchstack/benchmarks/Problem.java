// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.Pitch;

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
    private static final LinearScale SCALE = new LinearScale(LengthUnit.MM);
    private static final int RACK_RIDER = 20;
    private static final int PRINTED_RIDER = 10;
    private static final long SEED = 2_540;

    private final String rackPitch;
    private final int rackPositions;
    private final int positions;
    private final String shift;
    private final List<String> pitches;

    Problem(String rackPitch, int rackPositions, int positions, String shift, List<String> pitches) {
        this.rackPitch = rackPitch;
        this.rackPositions = rackPositions;
        this.positions = positions;
        this.shift = shift;
        this.pitches = pitches;
    }

    /** The axis with stops at the ends of the travel. */
    public AxisSpec axis() {
        return axis(List.of());
    }

    /** The same with a worn, a barred and a long worn stretch of rack teeth. */
    public AxisSpec wornAxis() {
        return axis(List.of(new WornRange(new ToothSpan(100, 110), Wear.WORN),
                new WornRange(new ToothSpan(300, 302), Wear.BARRED),
                new WornRange(new ToothSpan(400, 499), Wear.WORN)));
    }

    private AxisSpec axis(List<WornRange> marks) {
        List<StageSpec> stages = new ArrayList<>();
        List<ShiftLimit> limits = new ArrayList<>();
        stages.add(stage(rackPitch, 0, rackPositions, RACK_RIDER, marks, new EffortCost(4000, 1000)));
        for (int j = 0; j < pitches.size(); j++) {
            boolean back = j % 2 == 1;
            stages.add(stage(pitches.get(j), -positions / 2 + (back ? 1 : 0), positions, PRINTED_RIDER, List.of(),
                    new EffortCost(2000, 1000)));
            if (back) {
                limits.add(new ShiftLimit(j, j + 1, SCALE.parse(shift)));
            }
        }
        return new AxisSpec(name(), SCALE, stages, 0, OptionalLong.of(0), OptionalLong.of(TRAVEL), limits, TOLERANCE,
                OptionalLong.empty());
    }

    private static StageSpec stage(String pitch, int first, int positions, int riderTeeth, List<WornRange> marks,
            EffortCost cost) {
        long counts = Pitch.parse(pitch).units(SCALE);
        RowPair rows = new RowPair(new RowSpec(positions + riderTeeth - 1, marks), new RowSpec(riderTeeth, List.of()),
                -first, riderTeeth);
        return new StageSpec("", Source.PRINTED, counts, counts, rows, cost);
    }

    /** Targets spread evenly over the travel, to a micrometre, in an order by chance that is the same on every run. */
    public long[] targets(int count) {
        Random random = new Random(SEED);
        return random.longs(count, 20_000, TRAVEL / 1_000_000_000L - 20_000).map(um -> um * 1_000_000_000L).toArray();
    }

    /** Settings by chance that rows, stops and limits allow. */
    public Setting[] settings(AxisSpec axis, int count) {
        Random random = new Random(SEED + 1);
        Setting[] settings = new Setting[count];
        for (int i = 0; i < count; i++) {
            do {
                settings[i] = Setting.of(axis.stages().stream().map(s -> s.rows().indices())
                        .mapToInt(r -> r.first() + random.nextInt(r.count())).toArray());
            } while (!isAllowed(axis, settings[i]));
        }
        return settings;
    }

    private static boolean isAllowed(AxisSpec axis, Setting setting) {
        long position = axis.position(setting);
        return 0 <= position && position <= TRAVEL && axis.shiftLimits().stream().allMatch(limit -> Math.abs(
                shift(axis, setting, limit.lowest()) + shift(axis, setting, limit.highest())) <= limit.limit());
    }

    private static long shift(AxisSpec axis, Setting setting, int stage) {
        return axis.stages().get(stage).pitch() * setting.index(stage);
    }
}
