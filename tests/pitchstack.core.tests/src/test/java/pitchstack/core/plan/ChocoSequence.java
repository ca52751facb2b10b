// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.expression.discrete.arithmetic.ArExpression;
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
            ArExpression position = model.intVar((int) axis.datum());
            for (int j = 0; j < index[v].length; j++) {
                StageSpec stage = axis.stages().get(j);
                index[v][j] = model.intVar("n" + v + "_" + j, usable(stage));
                position = position.add(index[v][j].mul((int) stage.pitch()));
                IntVar before = v == 0 ? model.intVar(request.from().index(j)) : index[v - 1][j];
                efforts.add(effort(before, index[v][j], stage));
            }
            position.sub(targets[v]).abs().le(tolerances[v]).post();
        }
        IntVar sum = model.intVar("sum", 0, FAR);
        model.sum(efforts.toArray(IntVar[]::new), "=", sum).post();
        Solution best = model.getSolver().findOptimalSolution(sum, false);
        return best == null ? -1 : best.getIntVal(sum);
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
        IntVar teeth = model.intVar("teeth", 0, 10_000);
        to.sub(from).abs().eq(teeth).post();
        IntVar moved = teeth.ne(0).boolVar();
        IntVar effort = model.intVar("effort", 0, FAR);
        ArExpression sum = moved.mul((int) stage.cost().releaseMs()).add(teeth.mul((int) stage.cost().perToothMs()));
        if (axis.approach() != Approach.EITHER) {
            IntVar further = (axis.approach() == Approach.FORWARD ? to.lt(from) : to.gt(from)).boolVar();
            sum = sum.add(further.mul(2 * (int) stage.cost().perToothMs()));
            furtherMustBeUsable(from, to, stage, further);
        }
        effort.eq(sum).post();
        return effort;
    }

    private void furtherMustBeUsable(IntVar from, IntVar to, StageSpec stage, IntVar further) {
        int step = axis.approach() == Approach.FORWARD ? -1 : 1;
        int[] usable = usable(stage);
        for (int n : usable) {
            if (IntStream.of(usable).noneMatch(u -> u == n + step)) {
                further.eq(1).and(to.eq(n)).not().post();
            }
        }
    }
}
