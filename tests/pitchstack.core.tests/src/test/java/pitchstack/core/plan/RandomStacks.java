// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import pitchstack.core.stack.Approach;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.IndexErrors;
import pitchstack.core.stack.IndexRange;
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
import pitchstack.core.units.RotaryScale;

/** Small stacks and requests by chance, leaning towards what is hard: ties, edges, marks, odd starts. */
public final class RandomStacks {
    /** The most settings a stack may have, so that all of them can be listed. */
    private static final int MOST_SETTINGS = 300;
    private final Random random;

    public RandomStacks(long seed) {
        this.random = new Random(seed);
    }

    public AxisSpec axis() {
        long turn = oneIn(3) ? RotaryScale.ARC_SECONDS * (1 + random.nextInt(2)) : 0;
        long unit = turn > 0 ? turn / (2 + random.nextInt(40)) : oneIn(4) ? 1_000_000_007L : 1;
        int wanted = 1 + random.nextInt(oneIn(8) ? 6 : 4);
        List<StageSpec> stages = new ArrayList<>();
        int settings = 1;
        while (stages.size() < wanted) {
            StageSpec stage = stage(stages.size(), unit, turn);
            settings *= stage.rows().indices().count();
            if (settings > MOST_SETTINGS && !stages.isEmpty()) {
                break;
            }
            stages.add(stage);
        }
        long datum = (random.nextInt(41) - 20) * unit;
        return new AxisSpec("random", turn > 0 ? new RotaryScale(turn) : new LinearScale(LengthUnit.MM), stages, datum,
                stop(unit, turn), stop(unit, turn), limits(stages.size(), unit), approach(), 0, OptionalLong.empty());
    }

    /** As {@link #axis}, with measured errors of indices on some stages more often than not. */
    AxisSpec measuredAxis() {
        AxisSpec axis = axis();
        if (oneIn(3)) {
            return axis;
        }
        for (int j = 0; j < axis.stages().size(); j++) {
            axis = oneIn(3) ? axis : axis.withStage(j, axis.stages().get(j).withErrors(errors(axis.stages().get(j))));
        }
        return axis;
    }

    /** On and about the indices of a stage, now and then as large as errors may be. */
    private IndexErrors errors(StageSpec stage) {
        long most = (stage.pitch() - 1) / 2;
        int near = oneIn(2) ? (int) Math.min(most, 3) : (int) Math.min(most, 1 << 29);
        IndexRange range = stage.rows().meeting();
        TreeMap<Integer, Long> errors = new TreeMap<>();
        for (int n = range.first() - 1; n <= range.last() + 1; n++) {
            if (!oneIn(3)) {
                errors.put(n, oneIn(6) ? (oneIn(2) ? most : -most) : random.nextInt(2 * near + 1) - near);
            }
        }
        return IndexErrors.of(errors);
    }

    PlanRequest request(AxisSpec axis) {
        int[] from = new int[axis.stages().size()];
        int[] near = new int[from.length];
        for (int j = 0; j < from.length; j++) {
            List<Integer> indices = BruteForce.indicesOf(axis.stages().get(j).rows());
            near[j] = indices.get(random.nextInt(indices.size()));
            from[j] = oneIn(12) ? random.nextInt() : oneIn(6) ? random.nextInt(60) - 30
                    : indices.get(random.nextInt(indices.size()));
        }
        long unit = axis.stages().get(random.nextInt(from.length)).pitch();
        long tolerance = tolerance(unit);
        int alternatives = oneIn(3) ? oneIn(10) ? Integer.MAX_VALUE : random.nextInt(6) : 0;
        return new PlanRequest(target(axis.position(Setting.of(near)), tolerance, unit), tolerance, Setting.of(from),
                directions(from.length), WornPolicy.values()[random.nextInt(3)], alternatives);
    }

    /** Up to five stops near positions of the axis, most with a tolerance that a few settings meet. */
    SequenceRequest list(AxisSpec axis, StopOrder order) {
        List<Stop> stops = new ArrayList<>();
        PlanRequest first = request(axis);
        for (int i = random.nextInt(6); i > 0; i--) {
            PlanRequest request = request(axis);
            long tolerance = oneIn(3) ? request.tolerance()
                    : random.nextInt(3) * axis.stages().get(random.nextInt(axis.stages().size())).pitch();
            stops.add(new Stop(oneIn(2) ? "" : "T" + i, request.target(), tolerance));
        }
        return new SequenceRequest(stops, first.from(), first.last(), first.worn(), order,
                SequenceRequest.DEFAULT_MEMORY);
    }

    private Approach approach() {
        return oneIn(2) ? Approach.EITHER : oneIn(2) ? Approach.FORWARD : Approach.BACK;
    }

    Directions directions(int stages) {
        Direction[] all = Direction.values();
        return new Directions(Stream.generate(() -> all[random.nextInt(all.length)]).limit(stages).toList());
    }

    private long tolerance(long unit) {
        return switch (random.nextInt(8)) {
            case 0, 1, 2 -> 0;
            case 3 -> 1 + random.nextInt(3);
            case 4 -> random.nextInt(12) * unit;
            case 5 -> oneIn(8) ? Long.MAX_VALUE - random.nextInt(2) : unit / 2;
            default -> unit / (1 + random.nextInt(5));
        };
    }

    /** On a position, at the edge of its tolerance or one count past it, somewhere, or far out. */
    private long target(long position, long tolerance, long unit) {
        if (oneIn(40)) {
            return oneIn(2) ? Long.MAX_VALUE - random.nextInt(3) : Long.MIN_VALUE + random.nextInt(3);
        }
        long sign = oneIn(2) ? 1 : -1;
        return switch (random.nextInt(6)) {
            case 0 -> position;
            case 1 -> position + sign * Math.min(tolerance, 1L << 50);
            case 2 -> position + sign * (Math.min(tolerance, 1L << 50) + 1);
            case 3 -> position + sign * Math.max(0, Math.min(tolerance, 1L << 50) - 1);
            case 4 -> position + sign * random.nextInt(60) * unit;
            default -> position + random.nextInt(9) - 4;
        };
    }

    private StageSpec stage(int number, long unit, long turn) {
        long pitch = turn > 0 && oneIn(3) ? turn / (1 + random.nextInt(8)) : unit * (1 + random.nextInt(12));
        pitch += oneIn(6) ? 1 : 0;
        pitch = turn > 0 ? Math.min(pitch, turn) : pitch;
        RowSpec base = row(1 + random.nextInt(8));
        RowSpec rider = row(1 + random.nextInt(6));
        int minimum = random.nextInt(Math.min(base.teeth(), rider.teeth()) + 1) - (oneIn(10) ? 2 : 0);
        EffortCost cost = new EffortCost(random.nextInt(4), random.nextInt(3), oneIn(3) ? random.nextInt(4) : 0);
        return new StageSpec("s" + number, Source.PRINTED, pitch, pitch,
                new RowPair(base, rider, random.nextInt(13) - 5, minimum), cost);
    }

    private RowSpec row(int teeth) {
        List<WornRange> marks = new ArrayList<>();
        while (oneIn(4)) {
            int first = random.nextInt(teeth + 4) - 2;
            Wear wear = oneIn(8) ? Wear.CLEAN : oneIn(2) ? Wear.WORN : Wear.BARRED;
            marks.add(new WornRange(new ToothSpan(first, first + random.nextInt(4) - 1), wear));
        }
        return new RowSpec(teeth, marks);
    }

    private OptionalLong stop(long unit, long turn) {
        if (!oneIn(4)) {
            return OptionalLong.empty();
        }
        return OptionalLong.of(turn > 0 ? (long) (random.nextDouble() * 3 * turn) - turn
                : (random.nextInt(121) - 60) * unit);
    }

    private List<ShiftLimit> limits(int stages, long unit) {
        List<ShiftLimit> limits = new ArrayList<>();
        while (oneIn(4)) {
            int lowest = random.nextInt(stages);
            limits.add(new ShiftLimit(lowest, lowest + random.nextInt(stages - lowest), random.nextInt(30) * unit));
        }
        return limits;
    }

    boolean oneIn(int n) {
        return random.nextInt(n) == 0;
    }

    /** How many combinations the planner may list: often so few that it must search stage by stage. */
    int mostEntries() {
        return oneIn(2) ? CombinationLister.MOST_ENTRIES : 1 + random.nextInt(20);
    }

    /** From which gain on the planner may search by what combinations cost: often always. */
    double leastGain() {
        return oneIn(2) ? KeySearch.LEAST_GAIN : 0;
    }
}
