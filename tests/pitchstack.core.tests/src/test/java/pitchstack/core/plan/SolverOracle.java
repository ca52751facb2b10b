// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Supplier;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.Wear;

/**
 * The planning problem stated to a general-purpose constraint solver, which knows nothing of racks. The order among
 * equals is kept by optimising one quantity after another and fixing each. Its numbers are 32-bit, so that an axis is
 * stated in a coarser unit of which every length must be a whole multiple.
 */
final class SolverOracle {
    private final AxisSpec axis;
    private final PlanRequest request;
    private final long unit;
    private final boolean wornToo;
    private final BruteForceMoves moves;
    /** Settings that the solver need not name again. */
    private final List<int[]> passed = new ArrayList<>();

    private Model model;
    private IntVar[] index;
    /** Position minus target; on a rotary axis the short way round. */
    private IntVar error;
    private IntVar effort;
    private IntVar worn;

    private SolverOracle(AxisSpec axis, PlanRequest request, long unit, boolean wornToo) {
        this.axis = axis;
        this.request = request;
        this.unit = unit;
        this.wornToo = wornToo;
        this.moves = new BruteForceMoves(axis, request.from(), request.last());
    }

    /**
     * Plans without alternatives. The reason of a nearest answer is not asked.
     *
     * @param unit counts in the solver's unit
     */
    static Answer plan(AxisSpec axis, PlanRequest request, long unit) {
        boolean readily = request.worn() == WornPolicy.ALLOW;
        Optional<PlannedSetting> best = new SolverOracle(axis, request, unit, readily).least();
        if (best.isEmpty() && request.worn() == WornPolicy.AVOID) {
            best = new SolverOracle(axis, request, unit, true).least();
        }
        if (best.isPresent()) {
            return new Answer.Reached(best.get(), List.of());
        }
        SolverOracle usable = new SolverOracle(axis, request, unit, request.worn() != WornPolicy.NEVER);
        return new Answer.Nearest(usable.beside(-1), usable.beside(1), null);
    }

    private Optional<PlannedSetting> least() {
        long tolerance = request.tolerance() / unit;
        return best(() -> new IntVar[] {effort, distance(), worn, error}, (int) -tolerance, (int) tolerance,
                Comparator.comparingLong(PlannedSetting::effortMs).thenComparingLong(p -> Math.abs(p.error()))
                        .thenComparingInt(p -> p.wornStages().size()).thenComparingLong(PlannedSetting::error)
                        .thenComparing(PlannedSetting::setting));
    }

    private Optional<PlannedSetting> beside(int side) {
        int far = axis.scale().turn() == 0 ? 1 << 24 : (int) (axis.scale().turn() / unit) - 1;
        // On the way round, the error the solver minimises is not the one that is reported.
        ToLongFunction<PlannedSetting> way = p -> axis.scale().turn() == 0 ? Math.abs(p.error())
                : Math.floorMod(side < 0 ? -p.error() : p.error(), axis.scale().turn());
        return best(() -> new IntVar[] {distance(), effort, worn}, side < 0 ? -far : 0, side < 0 ? 0 : far,
                Comparator.comparingLong(way).thenComparingLong(PlannedSetting::effortMs)
                        .thenComparingInt(p -> p.wornStages().size()).thenComparing(PlannedSetting::setting));
    }

    /**
     * The solver knows what a move costs with one step a stage, not what limits on the way make of it. It is asked for one
     * end after another until an end that costs just that.
     */
    private Optional<PlannedSetting> best(Supplier<IntVar[]> goals, int low, int high, Comparator<PlannedSetting> order) {
        passed.clear();
        Optional<PlannedSetting> best = Optional.empty();
        for (Optional<int[]> end = inOrder(goals, low, high); end.isPresent(); end = inOrder(goals, low, high)) {
            Optional<PlannedSetting> planned = moves.steps(end.get()).map(this::planned);
            if (planned.isPresent() && (best.isEmpty() || order.compare(planned.get(), best.get()) < 0)) {
                best = planned;
            }
            if (planned.isPresent() && planned.get().steps().stream().noneMatch(s -> s.kind() == Step.Kind.PARTWAY)) {
                return best;
            }
            passed.add(end.get());
        }
        return best;
    }

    /** Minimises each goal in turn, then the indices, within bounds of the error. */
    private Optional<int[]> inOrder(Supplier<IntVar[]> goals, int low, int high) {
        List<Integer> fixed = new ArrayList<>();
        Solution solution = null;
        for (int goal = 0; ; goal++) {
            state(low, high);
            List<IntVar> order = new ArrayList<>(List.of(goals.get()));
            order.addAll(List.of(index));
            if (goal == order.size()) {
                break;
            }
            for (int i = 0; i < goal; i++) {
                model.arithm(order.get(i), "=", fixed.get(i)).post();
            }
            solution = model.getSolver().findOptimalSolution(order.get(goal), Model.MINIMIZE);
            if (solution == null) {
                return Optional.empty();
            }
            fixed.add(solution.getIntVal(order.get(goal)));
        }
        int goalCount = fixed.size() - index.length;
        return Optional.of(fixed.subList(goalCount, fixed.size()).stream().mapToInt(n -> n).toArray());
    }

    private PlannedSetting planned(List<Step> steps) {
        int[] indices = request.from().toArray();
        steps.forEach(step -> indices[step.stage()] = step.to());
        Setting setting = Setting.of(indices);
        List<Integer> wornStages = new ArrayList<>();
        for (int j = 0; j < indices.length; j++) {
            StageSpec stage = axis.stages().get(j);
            if (stage.rows().wearAt(indices[j]) == Wear.WORN) {
                wornStages.add(j);
            }
        }
        long position = axis.position(setting);
        return new PlannedSetting(setting, position, axis.scale().difference(position, request.target()),
                moves.effort(indices), wornStages, steps);
    }

    private IntVar distance() {
        return model.intAbsView(error);
    }

    private void state(int low, int high) {
        model = new Model();
        int stages = axis.stages().size();
        index = new IntVar[stages];
        IntVar[] efforts = new IntVar[stages];
        IntVar[] worns = new IntVar[stages];
        for (int j = 0; j < stages; j++) {
            StageSpec stage = axis.stages().get(j);
            int[] usable = usable(stage);
            index[j] = model.intVar("n" + j, usable);
            efforts[j] = effort(stage, index[j], request.from().index(j));
            int[] marks = IntStream.rangeClosed(usable[0], usable[usable.length - 1])
                    .map(n -> stage.rows().wearAt(n) == Wear.WORN ? 1 : 0).toArray();
            worns[j] = model.boolVar();
            model.element(worns[j], marks, index[j], usable[0]).post();
        }
        effort = sum(efforts);
        worn = sum(worns);
        error = model.intVar("error", low, high, true);
        placeError();
        limits();
        for (int[] settings : passed) {
            BoolVar[] elsewhere = new BoolVar[stages];
            for (int j = 0; j < stages; j++) {
                elsewhere[j] = model.arithm(index[j], "!=", settings[j]).reify();
            }
            model.or(elsewhere).post();
        }
    }

    private int[] usable(StageSpec stage) {
        IndexRange range = stage.rows().indices();
        return IntStream.rangeClosed(range.first(), range.last()).filter(n -> {
            Wear wear = stage.rows().wearAt(n);
            return wear == Wear.CLEAN || (wornToo && wear == Wear.WORN);
        }).toArray();
    }

    private IntVar effort(StageSpec stage, IntVar n, int from) {
        IntVar teeth = model.intAbsView(model.intOffsetView(n, -from));
        BoolVar moves = model.arithm(teeth, ">", 0).reify();
        int release = (int) stage.cost().releaseMs();
        int perTooth = (int) stage.cost().perToothMs();
        IntVar effort = model.intVar("effort", 0, release + perTooth * teeth.getUB(), true);
        model.scalar(new IntVar[] {moves, teeth, effort}, new int[] {release, perTooth, -1}, "=", 0).post();
        return effort;
    }

    private IntVar sum(IntVar[] parts) {
        int most = IntStream.range(0, parts.length).map(j -> parts[j].getUB()).sum();
        IntVar sum = model.intVar("sum", 0, most, true);
        model.sum(parts, "=", sum).post();
        return sum;
    }

    /** datum + Σ index · pitch − turn · lap − error = target, and the position between the stops. */
    private void placeError() {
        int stages = index.length;
        IntVar[] vars = Arrays.copyOf(index, stages + 2);
        int[] factors = new int[stages + 2];
        for (int j = 0; j < stages; j++) {
            factors[j] = units(axis.stages().get(j).pitch());
        }
        int turn = units(axis.scale().turn());
        vars[stages] = turn == 0 ? model.intVar(0) : model.intVar("lap", -50, 50);
        factors[stages] = -turn;
        vars[stages + 1] = error;
        factors[stages + 1] = -1;
        model.scalar(vars, factors, "=", units(request.target()) - units(axis.datum())).post();
        stop(axis.low(), ">=");
        stop(axis.high(), "<=");
    }

    private void stop(OptionalLong stop, String relation) {
        if (stop.isPresent()) {
            model.arithm(error, relation, units(stop.getAsLong()) - units(request.target())).post();
        }
    }

    private void limits() {
        for (ShiftLimit limit : axis.shiftLimits()) {
            int[] stages = IntStream.rangeClosed(limit.lowest(), limit.highest()).toArray();
            IntVar[] vars = IntStream.of(stages).mapToObj(j -> index[j]).toArray(IntVar[]::new);
            int[] factors = IntStream.of(stages).map(j -> units(axis.stages().get(j).pitch())).toArray();
            model.scalar(vars, factors, "<=", units(limit.limit())).post();
            model.scalar(vars, factors, ">=", -units(limit.limit())).post();
        }
    }

    private int units(long counts) {
        if (counts % unit != 0) {
            throw new IllegalArgumentException(counts + " is no whole multiple of " + unit);
        }
        return Math.toIntExact(counts / unit);
    }
}
