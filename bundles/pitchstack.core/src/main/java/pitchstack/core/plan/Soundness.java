// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.List;
import java.util.Optional;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.units.RotaryScale;

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
    /** A step may start at any {@code int} and end at any other. */
    private static final long LONGEST_STEP = 1L << 32;

    private Soundness() { }

    /**
     * What is wrong with the numbers of an axis.
     *
     * @param axis any axis, whatever its numbers
     * @return one sentence, or empty where the axis can be planned with
     */
    public static Optional<String> problem(AxisSpec axis) {
        List<StageSpec> stages = axis.stages();
        if (stages.isEmpty()) {
            return Optional.of("The axis has no stage; add at least one.");
        }
        if (stages.size() > MOST_STAGES) {
            return Optional.of("The axis has " + stages.size() + " stages; at most " + MOST_STAGES + " can be planned.");
        }
        for (StageSpec stage : stages) {
            Optional<String> problem = stageProblem(stage, axis.scale().turn());
            if (problem.isPresent()) {
                return problem;
            }
        }
        return shiftProblem(axis).or(() -> overflow(axis));
    }

    private static Optional<String> stageProblem(StageSpec stage, long turn) {
        String name = "Stage “" + stage.name() + "” ";
        if (stage.pitch() <= 0) {
            return Optional.of(name + "has a pitch of " + stage.pitch() + " counts; a pitch must be above 0.");
        }
        if (turn > 0 && stage.pitch() > turn) {
            return Optional.of(name + "has a pitch above one turn; a ring needs at least one tooth in a turn.");
        }
        EffortCost cost = stage.cost();
        if (cost.releaseMs() < 0 || cost.perToothMs() < 0) {
            return Optional.of(name + "has a cost below 0; an effort cannot be negative.");
        }
        return rowProblem(name, stage.rows());
    }

    private static Optional<String> rowProblem(String name, RowPair rows) {
        int base = rows.base().teeth();
        int rider = rows.rider().teeth();
        if (base < 1 || rider < 1) {
            return Optional.of(name + "has rows of " + base + " and " + rider + " teeth; each needs at least 1.");
        }
        if (base > MOST_TEETH || rider > MOST_TEETH) {
            return Optional.of(name + "has rows of " + base + " and " + rider + " teeth; at most " + MOST_TEETH
                    + " can be planned.");
        }
        if (Math.abs((long) rows.start()) > MOST_TEETH) {
            return Optional.of(name + "starts at base tooth " + rows.start() + "; at most " + MOST_TEETH
                    + " teeth off the row's first can be planned.");
        }
        if (rows.minimumEngaged() > Math.min(base, rider)) {
            return Optional.of(name + "must keep " + rows.minimumEngaged() + " teeth engaged, but its rows of " + base
                    + " and " + rider + " teeth never have more than " + Math.min(base, rider) + ".");
        }
        return Optional.empty();
    }

    private static Optional<String> shiftProblem(AxisSpec axis) {
        for (ShiftLimit limit : axis.shiftLimits()) {
            if (limit.lowest() < 0 || limit.highest() < limit.lowest() || limit.highest() >= axis.stages().size()) {
                return Optional.of("A shift limit names stages " + (limit.lowest() + 1L) + " to "
                        + (limit.highest() + 1L) + ", but the axis has stages 1 to " + axis.stages().size() + ".");
            }
            if (limit.limit() < 0) {
                return Optional.of("A shift limit is " + limit.limit() + " counts; it must be at least 0.");
            }
        }
        return Optional.empty();
    }

    private static Optional<String> overflow(AxisSpec axis) {
        try {
            long reach = Math.addExact(Math.absExact(axis.datum()), axis.scale().turn());
            long effort = 0;
            for (StageSpec stage : axis.stages()) {
                var range = stage.rows().indices();
                long teeth = Math.max(Math.abs((long) range.first()), Math.abs((long) range.last()));
                reach = Math.addExact(reach, Math.multiplyExact(teeth, stage.pitch()));
                effort = Math.addExact(effort, Math.addExact(stage.cost().releaseMs(),
                        Math.multiplyExact(stage.cost().perToothMs(), LONGEST_STEP)));
            }
            if (reach <= FARTHEST) {
                return Optional.empty();
            }
        } catch (ArithmeticException e) {
            // Falls through to the sentence: the sum does not even fit a long.
        }
        return Optional.of("The numbers of this axis are too large to plan with exactly: datum and rows together must stay within "
                + (axis.scale() instanceof RotaryScale ? "a few dozen turns" : "2305 m")
                + ", and a tooth must cost less than four days.");
    }
}
