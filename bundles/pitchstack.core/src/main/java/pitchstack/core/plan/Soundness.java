// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import pitchstack.core.plan.Unsound.Cause;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.StageSpec;

/**
 * Whether the numbers of an axis can be planned with. It proves once, when an axis is loaded, that no sum inside the
 * search can overflow, so that the search itself need not look.
 */
public final class Soundness {
    /** More stages than this make a search of minutes; six are what a device can sensibly have. */
    public static final int MOST_STAGES = 8;
    /** Fifty times the longest row thought of; keeps the tables by index small. */
    public static final int MOST_TEETH = 1_000_000;
    /**
     * The largest distance from 0 that the datum and all indices together may give, in counts: 2305 m on a linear
     * axis. Three such distances still add up within a {@code long}, which is what the search needs.
     */
    public static final long FARTHEST = 1L << 61;
    /** A stage may move from any {@code int} to any other, one tooth further, and back. */
    private static final long LONGEST_MOVE = (1L << 32) + 2;
    private static final OptionalInt AXIS = OptionalInt.empty();

    private Soundness() { }

    /**
     * The first of {@link #problems}.
     *
     * @param axis any axis, whatever its numbers
     * @return the reason, or empty where the axis can be planned with
     */
    public static Optional<Unsound> problem(AxisSpec axis) {
        return problems(axis).stream().findFirst();
    }

    /**
     * What is wrong with the numbers of an axis, in stage order; that its sums do not fit is found only where nothing
     * else is wrong.
     *
     * @param axis any axis, whatever its numbers
     */
    public static List<Unsound> problems(AxisSpec axis) {
        List<Unsound> found = new ArrayList<>();
        stageCountProblem(axis).ifPresent(found::add);
        for (int j = 0; j < axis.stages().size(); j++) {
            StageSpec stage = axis.stages().get(j);
            pitchProblem(axis, j).ifPresent(found::add);
            errorProblem(axis, j).ifPresent(found::add);
            costProblem(stage, j).ifPresent(found::add);
            rowProblem(stage, j).ifPresent(found::add);
        }
        axis.shiftLimits().forEach(limit -> shiftProblem(axis, limit).ifPresent(found::add));
        if (found.isEmpty()) {
            overflow(axis).ifPresent(found::add);
        }
        return found;
    }

    private static Optional<Unsound> stageCountProblem(AxisSpec axis) {
        int stages = axis.stages().size();
        if (stages == 0) {
            return found(Cause.NO_STAGE, AXIS, "0 stages", "1 stage",
                    "The axis has no stage, so nothing can be moved; add at least one.");
        }
        return stages <= MOST_STAGES ? Optional.empty() : found(Cause.TOO_MANY_STAGES, AXIS, stages + " stages",
                MOST_STAGES + " stages", "The axis has " + stages + " stages, more than the " + MOST_STAGES
                        + " that can be planned; leave out some.");
    }

    private static Optional<Unsound> pitchProblem(AxisSpec axis, int j) {
        StageSpec stage = axis.stages().get(j);
        String pitch = axis.scale().format(stage.pitch());
        if (stage.pitch() <= 0) {
            return found(Cause.PITCH_NOT_POSITIVE, OptionalInt.of(j), pitch, "above 0", name(stage, j) + "has a pitch of "
                    + pitch + "; give the spacing of its teeth, above 0.");
        }
        boolean aboveTurn = axis.scale().turn() > 0 && stage.pitch() > axis.scale().turn();
        return !aboveTurn ? Optional.empty() : found(Cause.PITCH_ABOVE_TURN, OptionalInt.of(j), pitch, "one turn",
                name(stage, j) + "has a pitch of " + pitch + ", more than one turn; give it at least one tooth a turn.");
    }

    /** Errors below half a pitch leave the places of the indices in order, which the search relies on. */
    private static Optional<Unsound> errorProblem(AxisSpec axis, int j) {
        StageSpec stage = axis.stages().get(j);
        long largest = stage.errors().largest();
        if (largest == 0 || largest <= (stage.pitch() - 1) / 2) {
            return Optional.empty();
        }
        String value = axis.scale().format(largest);
        String limit = "half a pitch, " + axis.scale().format(stage.pitch() / 2);
        return found(Cause.INDEX_ERROR_TOO_LARGE, OptionalInt.of(j), value, limit, name(stage, j)
                + "has an index error of " + value + "; an error must stay below " + limit
                + ", or the teeth were counted wrongly.");
    }

    private static Optional<Unsound> costProblem(StageSpec stage, int j) {
        long release = stage.cost().releaseMs();
        long perTooth = stage.cost().perToothMs();
        long reversal = stage.cost().reversalMs();
        if (release >= 0 && perTooth >= 0 && reversal >= 0) {
            return Optional.empty();
        }
        String value = release < 0 ? release + " ms a release" : perTooth < 0 ? perTooth + " ms a tooth"
                : reversal + " ms a turning round";
        return found(Cause.COST_NEGATIVE, OptionalInt.of(j), value, "0 ms",
                name(stage, j) + "costs " + value + "; enter 0 or the time it takes.");
    }

    /**
     * What is wrong with the rows of a stage by themselves.
     *
     * @param stage any stage, whatever its numbers
     * @param j its place in the axis
     */
    public static Optional<Unsound> rowProblem(StageSpec stage, int j) {
        RowPair rows = stage.rows();
        int base = rows.base().teeth();
        int rider = rows.rider().teeth();
        OptionalInt at = OptionalInt.of(j);
        String counts = base + " and " + rider + " teeth";
        if (base < 1 || rider < 1) {
            return found(Cause.ROW_EMPTY, at, counts, "1 tooth", name(stage, j) + "has rows of " + counts
                    + "; each needs at least 1.");
        }
        if (base > MOST_TEETH || rider > MOST_TEETH) {
            return found(Cause.ROW_TOO_LONG, at, counts, MOST_TEETH + " teeth", name(stage, j) + "has rows of " + counts
                    + "; at most " + MOST_TEETH + " each can be planned.");
        }
        if (Math.abs((long) rows.start()) > MOST_TEETH) {
            return found(Cause.ROW_TOO_LONG, at, "tooth " + rows.start(), MOST_TEETH + " teeth", name(stage, j)
                    + "starts at base tooth " + rows.start() + "; start it within " + MOST_TEETH + " of the first.");
        }
        int most = Math.min(base, rider);
        return rows.minimumEngaged() <= most ? Optional.empty() : found(Cause.ROWS_NEVER_MEET, at,
                rows.minimumEngaged() + " teeth", most + " teeth", name(stage, j) + "must keep " + rows.minimumEngaged()
                        + " teeth engaged, but its rows of " + counts + " never have more than " + most
                        + "; ask for fewer or lengthen the shorter row.");
    }

    private static Optional<Unsound> shiftProblem(AxisSpec axis, ShiftLimit limit) {
        int stages = axis.stages().size();
        if (limit.lowest() < 0 || limit.highest() < limit.lowest() || limit.highest() >= stages) {
            String named = "stages " + (limit.lowest() + 1L) + " to " + (limit.highest() + 1L);
            return found(Cause.SHIFT_LIMIT_STAGES, AXIS, named, "stages 1 to " + stages, "A shift limit names " + named
                    + ", but the axis has " + stages + " stages; name the lowest and the highest that it concerns.");
        }
        String value = axis.scale().format(limit.limit());
        return limit.limit() >= 0 ? Optional.empty() : found(Cause.SHIFT_LIMIT_NEGATIVE, AXIS, value, "at least 0",
                "A shift limit is " + value + ", which no setting keeps; enter how far a body may stand off.");
    }

    private static Optional<Unsound> overflow(AxisSpec axis) {
        try {
            long reach = Math.addExact(Math.absExact(axis.datum()), axis.scale().turn());
            long effort = 0;
            for (StageSpec stage : axis.stages()) {
                // Where the rows meet by too few teeth, a stage may still stand at the start.
                IndexRange range = stage.rows().meeting();
                long teeth = Math.max(Math.abs((long) range.first()), Math.abs((long) range.last()));
                reach = Math.addExact(reach, Math.multiplyExact(teeth, stage.pitch()));
                reach = Math.addExact(reach, stage.errors().largest());
                effort = Math.addExact(effort, farthestMove(stage.cost()));
            }
            if (reach <= FARTHEST) {
                return Optional.empty();
            }
        } catch (ArithmeticException e) {
            // The sum does not even fit a long: too large all the more.
        }
        String most = axis.scale().turn() == 0 ? "2305 m" : FARTHEST / axis.scale().turn() + " turns";
        return found(Cause.TOO_LARGE, AXIS, "more than " + most, most, "The numbers of this axis are too large to plan "
                + "with exactly; keep the datum and what all rows reach within " + most
                + " together, and the costs within a few days a tooth.");
    }

    private static String name(StageSpec stage, int j) {
        return "Stage " + stage.title(j) + " ";
    }

    private static Optional<Unsound> found(Cause cause, OptionalInt stage, String value, String limit,
            String sentence) {
        return Optional.of(new Unsound(cause, stage, value, limit, sentence));
    }

    /** The effort of the farthest move of a stage, from wherever it may stand. */
    static long farthestMove(EffortCost cost) {
        long releases = Math.multiplyExact(cost.releaseMs(), (long) MoveSplitter.MOST_STEPS);
        return Math.addExact(Math.addExact(releases, Math.multiplyExact(cost.perToothMs(), LONGEST_MOVE)),
                Math.multiplyExact(cost.reversalMs(), 2L));
    }
}
