// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import pitchstack.core.stack.Approach;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.Wear;

/**
 * The least effort over a list of stops as a general-purpose constraint solver finds it: one whole-number variable for
 * each stage at each visit, a linear condition for each stop, and the moves' effort as the objective. It knows nothing of
 * settings listed, of shortest paths or of sets of stops. For small stacks in small numbers, without limits.
 */
final class ChocoSequence {
    private static final int FAR = 1_000_000;

    private final AxisSpec axis;
    private final SequenceRequest request;
    private final Model model = new Model();
    private final int visits;

    ChocoSequence(AxisSpec axis, SequenceRequest request) {
        this.axis = axis;
        this.request = request;
        this.visits = request.stops().size();
    }

    /** The least effort of a plan that visits every stop, or −1 where there is none. */
    long least() {
        IntVar[] targets = new IntVar[visits];
        IntVar[] tolerances = new IntVar[visits];
        visit(targets, tolerances);
        List<IntVar> efforts = new ArrayList<>();
        IntVar[][] index = new IntVar[visits][axis.stages().size()];
        for (int v = 0; v < visits; v++) {
            for (int j = 0; j < index[v].length; j++) {
                StageSpec stage = axis.stages().get(j);
                index[v][j] = model.intVar("n" + v + "_" + j, usable(stage));
                IntVar before = v == 0 ? model.intVar(request.from().index(j)) : index[v - 1][j];
                efforts.add(effort(before, index[v][j], stage));
            }
            comeNear(index[v], targets[v], tolerances[v]);
        }
        IntVar sum = model.intVar("sum", 0, FAR);
        model.sum(efforts.toArray(IntVar[]::new), "=", sum).post();
        Solution best = model.getSolver().findOptimalSolution(sum, false);
        return best == null ? -1 : best.getIntVal(sum);
    }

    private void comeNear(IntVar[] index, IntVar target, IntVar tolerance) {
        IntVar position = model.intVar("position", -FAR, FAR);
        int[] pitches = axis.stages().stream().mapToInt(stage -> (int) stage.pitch()).toArray();
        model.scalar(index, pitches, "=", model.offset(position, -(int) axis.datum())).post();
        IntVar error = model.intVar("error", -FAR, FAR);
        model.arithm(position, "-", target, "=", error).post();
        IntVar distance = model.intVar("distance", 0, FAR);
        model.absolute(distance, error).post();
        model.arithm(distance, "<=", tolerance).post();
    }

    /** Which stop each visit is to: as given, or any order. */
    private void visit(IntVar[] targets, IntVar[] tolerances) {
        int[] target = request.stops().stream().mapToInt(stop -> (int) stop.target()).toArray();
        int[] tolerance = request.stops().stream().mapToInt(stop -> (int) stop.tolerance()).toArray();
        IntVar[] stop = new IntVar[visits];
        for (int v = 0; v < visits; v++) {
            boolean free = request.order() == StopOrder.FREE;
            stop[v] = model.intVar("stop" + v, free ? IntStream.range(0, visits).toArray() : new int[] {v});
            targets[v] = model.intVar("target" + v, -FAR, FAR);
            tolerances[v] = model.intVar("tolerance" + v, 0, FAR);
            model.element(targets[v], target, stop[v]).post();
            model.element(tolerances[v], tolerance, stop[v]).post();
        }
        model.allDifferent(stop).post();
    }

    private static int[] usable(StageSpec stage) {
        return BruteForce.indicesOf(stage.rows()).stream()
                .filter(n -> BruteForce.wear(stage.rows(), n) != Wear.BARRED).mapToInt(Integer::intValue).toArray();
    }

    /** Release, teeth, and two teeth more where the stage goes one further and comes back. */
    private IntVar effort(IntVar from, IntVar to, StageSpec stage) {
        IntVar way = model.intVar("way", -FAR, FAR);
        model.arithm(to, "-", from, "=", way).post();
        IntVar teeth = model.intVar("teeth", 0, FAR);
        model.absolute(teeth, way).post();
        BoolVar moved = model.arithm(way, "!=", 0).reify();
        int step = axis.approach() == Approach.FORWARD ? -1 : 1;
        BoolVar further = axis.approach() == Approach.EITHER ? model.boolVar(false)
                : model.arithm(way, step < 0 ? "<" : ">", 0).reify();
        furtherMustBeUsable(to, stage, further, step);
        IntVar effort = model.intVar("effort", 0, FAR);
        int perTooth = (int) stage.cost().perToothMs();
        model.scalar(new IntVar[] {moved, teeth, further}, new int[] {(int) stage.cost().releaseMs(), perTooth,
            2 * perTooth}, "=", effort).post();
        return effort;
    }

    private void furtherMustBeUsable(IntVar to, StageSpec stage, BoolVar further, int step) {
        int[] usable = usable(stage);
        for (int n : usable) {
            if (IntStream.of(usable).noneMatch(u -> u == n + step)) {
                model.or(further.not(), model.arithm(to, "!=", n).reify()).post();
            }
        }
    }
}
