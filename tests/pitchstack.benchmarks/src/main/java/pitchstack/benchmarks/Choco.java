// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.variables.IntVar;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;

/**
 * One target by choco. Its numbers have 32 bits, so lengths are rounded to nanometres and counted from the rack tooth
 * nearest to the target, with only the rack teeth about it: that helps it, and leaves it 10 nm off at the worst.
 */
final class Choco {
    /** For a target that cannot be reached. */
    static final long NONE = -1;
    private static final long NANOMETRE = 1_000_000L;
    private static final int SECOND = 1000;
    /** Rack teeth to either side: more than the fine stages can make up for. */
    private final int window;
    private final AxisSpec axis;

    /** A solver for one of the problems, whose first stage is the rack and whose limits tie pairs. */
    Choco(AxisSpec axis) {
        this.axis = axis;
        long shift = axis.shiftLimits().stream().mapToLong(ShiftLimit::limit).sum();
        this.window = (int) (shift / axis.stages().get(0).pitch()) + 1;
    }

    /** The least effort in milliseconds, or {@link #NONE}. */
    long leastEffort(long target, long tolerance, Setting from) {
        Model model = new Model();
        int stages = axis.stages().size();
        long rack = axis.stages().get(0).pitch();
        int near = (int) (target / rack);
        IntVar[] index = new IntVar[stages];
        int[] pitch = new int[stages];
        IntVar[] teethAndMoved = new IntVar[2 * stages];
        int[] costs = new int[2 * stages];
        for (int j = 0; j < stages; j++) {
            IndexRange range = axis.stages().get(j).rows().indices();
            EffortCost cost = axis.stages().get(j).cost();
            int origin = j == 0 ? near : 0;
            int first = j == 0 ? Math.max(range.first(), near - window) - near : range.first();
            int last = j == 0 ? Math.min(range.last(), near + window) - near : range.last();
            pitch[j] = (int) Math.round((double) axis.stages().get(j).pitch() / NANOMETRE);
            index[j] = model.intVar(first, last);
            IntVar away = model.offset(index[j], origin - from.index(j));
            teethAndMoved[2 * j] = model.abs(away);
            teethAndMoved[2 * j + 1] = model.arithm(away, "!=", 0).reify();
            costs[2 * j] = (int) cost.perToothMs() / SECOND;
            costs[2 * j + 1] = (int) cost.releaseMs() / SECOND;
        }
        int rest = (int) ((target - near * rack) / NANOMETRE);
        int allowed = (int) (tolerance / NANOMETRE);
        model.scalar(index, pitch, ">=", rest - allowed).post();
        model.scalar(index, pitch, "<=", rest + allowed).post();
        for (ShiftLimit limit : axis.shiftLimits()) {
            IntVar[] pair = {index[limit.lowest()], index[limit.highest()]};
            int[] pitches = {pitch[limit.lowest()], pitch[limit.highest()]};
            model.scalar(pair, pitches, ">=", (int) (-limit.limit() / NANOMETRE)).post();
            model.scalar(pair, pitches, "<=", (int) (limit.limit() / NANOMETRE)).post();
        }
        IntVar effort = model.intVar(0, 1 << 20, true);
        model.scalar(teethAndMoved, costs, "=", effort).post();
        Solution best = model.getSolver().findOptimalSolution(effort, false);
        return best == null ? NONE : (long) best.getIntVal(effort) * SECOND;
    }
}
