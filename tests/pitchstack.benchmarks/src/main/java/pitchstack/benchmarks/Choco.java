// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.variables.IntVar;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.Wear;

/**
 * One target by choco. Its numbers have 32 bits, so lengths are rounded to nanometres and counted from the rack tooth
 * nearest to the target, with only the rack teeth about it: that helps it, and leaves it some ten nanometres off.
 */
final class Choco {
    /** For a target that cannot be reached. */
    static final long NONE = -1;
    private static final long NANOMETRE = 1_000_000L;
    /** Costs are whole tenths of a second. */
    private static final int TENTH = 100;
    private static final int MOST_EFFORT = 1 << 20;

    private final AxisSpec axis;
    /** Rack teeth to either side: more than the fine stages can make up for. */
    private final int window;

    /** A solver for a linear axis with stops whose first stage is the rack. */
    Choco(AxisSpec axis) {
        this.axis = axis;
        long reach = 0;
        for (StageSpec stage : axis.stages().subList(1, axis.stages().size())) {
            IndexRange range = stage.rows().indices();
            reach += Math.max(Math.abs(stage.offset(range.first())), Math.abs(stage.offset(range.last())));
        }
        long limited = axis.shiftLimits().stream().mapToLong(ShiftLimit::limit).sum();
        this.window = (int) ((axis.shiftLimits().isEmpty() ? reach : limited) / axis.stages().get(0).pitch()) + 2;
    }

    /** The least effort in milliseconds, or {@link #NONE}. */
    long leastEffort(long target, long tolerance, Setting from) {
        Model model = new Model();
        int stages = axis.stages().size();
        long rack = axis.stages().get(0).pitch();
        int near = (int) Math.floorDiv(target - axis.datum(), rack);
        IntVar[] index = new IntVar[stages];
        int[] pitch = new int[stages];
        IntVar[] teethAndMoved = new IntVar[2 * stages];
        int[] costs = new int[2 * stages];
        for (int j = 0; j < stages; j++) {
            EffortCost cost = axis.stages().get(j).cost();
            int origin = j == 0 ? near : 0;
            int[] usable = usable(axis.stages().get(j), origin, j == 0 ? window : Integer.MAX_VALUE / 2);
            if (usable.length == 0) {
                return NONE;
            }
            pitch[j] = (int) Math.round((double) axis.stages().get(j).pitch() / NANOMETRE);
            index[j] = model.intVar("n" + j, usable);
            IntVar away = model.offset(index[j], origin - from.index(j));
            teethAndMoved[2 * j] = model.abs(away);
            teethAndMoved[2 * j + 1] = model.arithm(away, "!=", 0).reify();
            costs[2 * j] = (int) cost.perToothMs() / TENTH;
            costs[2 * j + 1] = (int) cost.releaseMs() / TENTH;
        }
        long origin = axis.datum() + near * rack;
        int low = nanometres(Math.max(target - tolerance, axis.low().orElseThrow()) - origin);
        int high = nanometres(Math.min(target + tolerance, axis.high().orElseThrow()) - origin);
        model.scalar(index, pitch, ">=", low).post();
        model.scalar(index, pitch, "<=", high).post();
        for (ShiftLimit limit : axis.shiftLimits()) {
            IntVar[] pair = {index[limit.lowest()], index[limit.highest()]};
            int[] pitches = {pitch[limit.lowest()], pitch[limit.highest()]};
            model.scalar(pair, pitches, ">=", nanometres(-limit.limit())).post();
            model.scalar(pair, pitches, "<=", nanometres(limit.limit())).post();
        }
        IntVar effort = model.intVar(0, MOST_EFFORT, true);
        model.scalar(teethAndMoved, costs, "=", effort).post();
        Solution best = model.getSolver().findOptimalSolution(effort, false);
        return best == null ? NONE : (long) best.getIntVal(effort) * TENTH;
    }

    private static int nanometres(long length) {
        return (int) Math.round((double) length / NANOMETRE);
    }

    /** The usable indices of a stage no farther from one of them than given, counted from it. */
    private static int[] usable(StageSpec stage, int origin, int far) {
        IndexRange range = stage.rows().indices();
        return IntStream.rangeClosed(Math.max(range.first(), origin - far), Math.min(range.last(), origin + far))
                .filter(n -> stage.rows().wearAt(n) != Wear.BARRED).map(n -> n - origin).toArray();
    }
}
