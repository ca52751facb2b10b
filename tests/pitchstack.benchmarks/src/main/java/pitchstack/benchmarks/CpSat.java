// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.util.Domain;
import java.util.stream.LongStream;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.Wear;

/** One target by CP-SAT: the same stages, limits and costs in femtometres. It finds the least effort, not who wins a tie. */
final class CpSat {
    /** For a target that cannot be reached. */
    static final long NONE = -1;
    private final AxisSpec axis;

    CpSat(AxisSpec axis) {
        Loader.loadNativeLibraries();
        this.axis = axis;
    }

    /** The least effort in milliseconds, or {@link #NONE}. */
    long leastEffort(long target, long tolerance, Setting from) {
        CpModel model = new CpModel();
        int stages = axis.stages().size();
        IntVar[] index = new IntVar[stages];
        LinearExprBuilder effort = LinearExpr.newBuilder();
        long most = 0;
        for (int j = 0; j < stages; j++) {
            IndexRange range = axis.stages().get(j).rows().indices();
            EffortCost cost = axis.stages().get(j).cost();
            index[j] = model.newIntVarFromDomain(Domain.fromValues(usable(axis.stages().get(j))), "n" + j);
            int far = Math.max(Math.abs(range.first() - from.index(j)), Math.abs(range.last() - from.index(j)));
            IntVar teeth = model.newIntVar(0, far, "d" + j);
            BoolVar moved = model.newBoolVar("m" + j);
            model.addAbsEquality(teeth, LinearExpr.affine(index[j], 1, -from.index(j)));
            model.addEquality(teeth, 0).onlyEnforceIf(moved.not());
            effort.addTerm(teeth, cost.perToothMs()).addTerm(moved, cost.releaseMs());
            most += cost.releaseMs() + cost.perToothMs() * far;
        }
        model.addLinearConstraint(sum(index, 0, stages - 1), target - tolerance - axis.datum(),
                target + tolerance - axis.datum());
        model.addLinearConstraint(sum(index, 0, stages - 1), axis.low().orElseThrow() - axis.datum(),
                axis.high().orElseThrow() - axis.datum());
        for (ShiftLimit limit : axis.shiftLimits()) {
            model.addLinearConstraint(sum(index, limit.lowest(), limit.highest()), -limit.limit(), limit.limit());
        }
        IntVar total = model.newIntVar(0, most, "effort");
        model.addEquality(total, effort);
        model.minimize(total);
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(1).setAbsoluteGapLimit(0).setRelativeGapLimit(0);
        CpSolverStatus status = solver.solve(model);
        if (status == CpSolverStatus.INFEASIBLE) {
            return NONE;
        }
        if (status != CpSolverStatus.OPTIMAL) {
            throw new IllegalStateException("CP-SAT ended with " + status);
        }
        return solver.value(total);
    }

    private static long[] usable(StageSpec stage) {
        IndexRange range = stage.rows().indices();
        return LongStream.rangeClosed(range.first(), range.last())
                .filter(n -> stage.rows().wearAt((int) n) != Wear.BARRED).toArray();
    }

    private LinearExpr sum(IntVar[] index, int lowest, int highest) {
        LinearExprBuilder sum = LinearExpr.newBuilder();
        for (int j = lowest; j <= highest; j++) {
            sum.addTerm(index[j], axis.stages().get(j).pitch());
        }
        return sum.build();
    }
}
