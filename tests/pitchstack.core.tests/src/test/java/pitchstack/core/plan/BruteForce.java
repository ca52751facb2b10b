// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.function.Predicate;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;

/**
 * The planner's promise, carried out by listing every setting and sorting. Slow and plain on purpose: tooth by tooth,
 * sharing no code with the planner but the records.
 */
public final class BruteForce {
    /** A setting with all that the order needs, and whether some move leads to it. */
    private record Line(PlannedSetting planned, boolean barred, boolean movable) { }

    private static final Comparator<Line> BY_INDICES = Comparator.comparing(l -> l.planned.setting());
    private static final Comparator<Line> BY_EFFORT_ON = Comparator
            .comparingLong((Line l) -> l.planned.effortMs())
            .thenComparingInt(l -> l.planned.wornStages().size());
    private static final Comparator<Line> ORDER = Comparator
            .comparingLong((Line l) -> l.planned.effortMs())
            .thenComparingLong(l -> Math.abs(l.planned.error()))
            .thenComparingInt(l -> l.planned.wornStages().size())
            .thenComparingInt(l -> l.planned.error() < 0 ? 0 : 1)
            .thenComparing(BY_INDICES);

    private final AxisSpec axis;
    private final long turn;
    /** By stage: what the teeth at each of its indices are fit for. */
    private final List<Map<Integer, Wear>> wears = new ArrayList<>();
    private final List<int[]> settings = new ArrayList<>();
    private PlanRequest request;
    private BruteForceMoves moves;
    private List<Line> lines;

    BruteForce(AxisSpec axis) {
        this.axis = axis;
        this.turn = axis.scale().turn();
        for (StageSpec stage : axis.stages()) {
            Map<Integer, Wear> wear = new TreeMap<>();
            indicesOf(stage.rows()).forEach(n -> wear.put(n, wear(stage.rows(), n)));
            wears.add(wear);
        }
        list(new int[axis.stages().size()], 0);
    }

    /** How many settings the rows, stops and limits allow, over teeth of any kind. */
    int settings() {
        return settings.size();
    }

    Answer plan(PlanRequest asked) {
        request = asked;
        moves = new BruteForceMoves(axis, asked.from(), asked.last());
        lines = settings.stream().map(this::line).toList();
        return answer();
    }

    /** Every setting within a tolerance of a target that is over teeth no worse than given. */
    List<int[]> within(long target, long tolerance, Wear worst) {
        request = new PlanRequest(target, tolerance, Setting.zero(axis.stages().size()), WornPolicy.ALLOW, 0);
        return settings.stream().filter(indices -> worst(indices).compareTo(worst) <= 0)
                .filter(indices -> exactError(position(indices)).abs().compareTo(BigInteger.valueOf(tolerance)) <= 0)
                .toList();
    }

    /** |error| of a setting, the short way round on a rotary axis. */
    long distance(int[] indices, long target) {
        request = new PlanRequest(target, 0, Setting.zero(axis.stages().size()), WornPolicy.ALLOW, 0);
        return exactError(position(indices)).abs().min(BigInteger.valueOf(Long.MAX_VALUE)).longValueExact();
    }

    /** The worst teeth that a setting stands over. */
    Wear worst(int[] indices) {
        Wear worst = Wear.CLEAN;
        for (int j = 0; j < indices.length; j++) {
            worst = wears.get(j).get(indices[j]).worse(worst);
        }
        return worst;
    }

    private long position(int[] indices) {
        long place = place(indices);
        return turn == 0 ? place : ((place % turn) + turn) % turn;
    }

    private long place(int[] indices) {
        long place = axis.datum();
        for (int j = 0; j < indices.length; j++) {
            place += offset(axis.stages().get(j), indices[j]);
        }
        return place;
    }

    static long offset(StageSpec stage, int index) {
        return index * stage.pitch() + stage.errors().at(index);
    }

    private void list(int[] indices, int stage) {
        if (stage == indices.length) {
            if (limitsHold(indices) && stopsAllow(place(indices))) {
                settings.add(indices.clone());
            }
            return;
        }
        for (int n : wears.get(stage).keySet()) {
            indices[stage] = n;
            list(indices, stage + 1);
        }
    }

    /** The engaged base teeth at an index, one by one. */
    static List<Integer> engaged(RowPair rows, int n) {
        List<Integer> teeth = new ArrayList<>();
        for (int r = 0; r < rows.rider().teeth(); r++) {
            int b = rows.start() + n + r;
            if (b >= 0 && b < rows.base().teeth()) {
                teeth.add(b);
            }
        }
        return teeth;
    }

    public static List<Integer> indicesOf(RowPair rows) {
        List<Integer> indices = new ArrayList<>();
        int far = rows.base().teeth() + rows.rider().teeth() + Math.abs(rows.start());
        for (int n = -far; n <= far; n++) {
            int count = engaged(rows, n).size();
            if (count >= 1 && count >= rows.minimumEngaged()) {
                indices.add(n);
            }
        }
        return indices;
    }

    private static Wear mark(RowSpec row, int tooth) {
        Wear worst = Wear.CLEAN;
        for (WornRange range : row.worn()) {
            if (range.teeth().first() <= tooth && tooth <= range.teeth().last()
                    && range.wear().ordinal() > worst.ordinal()) {
                worst = range.wear();
            }
        }
        return worst;
    }

    public static Wear wear(RowPair rows, int n) {
        Wear worst = Wear.CLEAN;
        for (int b : engaged(rows, n)) {
            Wear base = mark(rows.base(), b);
            Wear rider = mark(rows.rider(), b - rows.start() - n);
            Wear pair = base.ordinal() > rider.ordinal() ? base : rider;
            worst = pair.ordinal() > worst.ordinal() ? pair : worst;
        }
        return worst;
    }

    private boolean limitsHold(int[] indices) {
        for (ShiftLimit limit : axis.shiftLimits()) {
            long sum = 0;
            for (int j = limit.lowest(); j <= limit.highest(); j++) {
                sum += offset(axis.stages().get(j), indices[j]);
            }
            if (sum > limit.limit() || sum < -limit.limit()) {
                return false;
            }
        }
        return true;
    }

    /** On a rotary axis: whether some lap of the place lies between the stops. */
    private boolean stopsAllow(long place) {
        OptionalLong low = axis.low();
        OptionalLong high = axis.high();
        if (turn == 0) {
            return (low.isEmpty() || place >= low.getAsLong()) && (high.isEmpty() || place <= high.getAsLong());
        }
        long from = low.orElse(0);
        long to = high.orElse(turn - 1);
        while (to < from) {
            to += turn;
        }
        long position = ((place % turn) + turn) % turn;
        for (long lap = position - 9 * turn; lap <= position + 9 * turn; lap += turn) {
            if (from <= lap && lap <= to) {
                return true;
            }
        }
        return false;
    }

    private Line line(int[] indices) {
        List<Integer> worn = new ArrayList<>();
        boolean barred = false;
        for (int j = 0; j < indices.length; j++) {
            Wear wear = wears.get(j).get(indices[j]);
            barred |= wear == Wear.BARRED;
            if (wear == Wear.WORN) {
                worn.add(j);
            }
        }
        long place = place(indices);
        long position = turn == 0 ? place : ((place % turn) + turn) % turn;
        Optional<List<Step>> steps = moves.steps(indices);
        return new Line(new PlannedSetting(Setting.of(indices), position, error(position), steps.isPresent() ? moves.effort(indices) : 0, worn,
                steps.orElse(List.of())), barred, steps.isPresent());
    }

    /** Position minus target; on a rotary axis the short way round, half a turn counting as up. */
    private BigInteger exactError(long position) {
        BigInteger error = BigInteger.valueOf(position).subtract(BigInteger.valueOf(request.target()));
        if (turn == 0) {
            return error;
        }
        long up = error.mod(BigInteger.valueOf(turn)).longValueExact();
        return BigInteger.valueOf(2 * up > turn ? up - turn : up);
    }

    /** The error as far as a long can say. */
    private long error(long position) {
        return exactError(position).max(BigInteger.valueOf(Long.MIN_VALUE)).min(BigInteger.valueOf(Long.MAX_VALUE))
                .longValueExact();
    }

    private boolean near(Line line) {
        return exactError(line.planned.position()).abs().compareTo(BigInteger.valueOf(request.tolerance())) <= 0;
    }

    private Answer answer() {
        Predicate<Line> clean = l -> !l.barred && l.planned.wornStages().isEmpty();
        Predicate<Line> usable = request.worn() == WornPolicy.NEVER ? clean : l -> !l.barred;
        List<Line> first = sorted(request.worn() == WornPolicy.ALLOW ? usable : clean);
        List<Line> found = first.isEmpty() ? sorted(usable) : first;
        if (!found.isEmpty()) {
            List<PlannedSetting> all = found.stream().map(Line::planned).toList();
            int end = (int) Math.min(all.size(), 1L + request.alternatives());
            return new Answer.Reached(all.get(0), all.subList(1, end));
        }
        return new Answer.Nearest(beside(usable, true), beside(usable, false), reason(usable));
    }

    private List<Line> sorted(Predicate<Line> which) {
        return lines.stream().filter(which.and(this::near)).filter(Line::movable).sorted(ORDER).toList();
    }

    private Optional<PlannedSetting> beside(Predicate<Line> which, boolean below) {
        return lines.stream().filter(which).filter(Line::movable).filter(l -> turn > 0 || isBelow(l) == below)
                .min(Comparator.comparingLong((Line l) -> way(l, below)).thenComparing(BY_EFFORT_ON)
                        .thenComparing(BY_INDICES))
                .map(Line::planned);
    }

    private boolean isBelow(Line line) {
        return line.planned.position() < request.target();
    }

    /** How far the position is from the target going one way; on a linear axis up to a constant. */
    private long way(Line line, boolean below) {
        long position = line.planned.position();
        if (turn == 0) {
            return below ? -position : position;
        }
        long up = Math.floorMod(position - Math.floorMod(request.target(), turn), turn);
        return below ? Math.floorMod(-up, turn) : up;
    }

    private Reason reason(Predicate<Line> usable) {
        if (lines.stream().filter(usable).anyMatch(this::near)) {
            return Reason.NO_MOVE;
        }
        if (lines.stream().anyMatch(this::near)) {
            return Reason.UNUSABLE_TEETH;
        }
        if (turn > 0) {
            boolean reach = !lines.isEmpty() && stopsAllow(Math.floorMod(request.target(), turn)) && rowsReach();
            return reach ? Reason.BETWEEN_STEPS : Reason.BEYOND_TRAVEL;
        }
        return lines.stream().anyMatch(this::isBelow) && lines.stream().anyMatch(l -> !isBelow(l))
                ? Reason.BETWEEN_STEPS : Reason.BEYOND_TRAVEL;
    }

    /** Whether some lap of the target lies between the ends of all rows and of any limit over all stages. */
    private boolean rowsReach() {
        long low = 0;
        long high = 0;
        for (StageSpec stage : axis.stages()) {
            List<Integer> indices = indicesOf(stage.rows());
            low += offset(stage, indices.get(0));
            high += offset(stage, indices.get(indices.size() - 1));
        }
        for (ShiftLimit limit : axis.shiftLimits()) {
            if (limit.lowest() == 0 && limit.highest() == axis.stages().size() - 1) {
                low = Math.max(low, -limit.limit());
                high = Math.min(high, limit.limit());
            }
        }
        long target = Math.floorMod(request.target(), turn);
        for (long lap = target - 100 * turn; lap <= target + 100 * turn; lap += turn) {
            if (axis.datum() + low <= lap && lap <= axis.datum() + high) {
                return true;
            }
        }
        return false;
    }
}
