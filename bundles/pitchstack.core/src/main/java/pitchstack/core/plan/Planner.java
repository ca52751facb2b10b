// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.Wear;

/**
 * Finds moves on one axis. Prepared once, then asked any number of times; never changed, so that several threads may
 * ask it at once.
 *
 * <p>On a rotary axis, where positions come round again: errors go the short way round; "nearest below" is the first
 * position met turning down from the target, however far; the stops leave free the arc from {@code low} up to
 * {@code high}, over 0 where {@code high} is the smaller, and a stop that is missing stands at 0 or just below one
 * turn.
 */
public final class Planner {
    private final AxisSpec axis;
    private final Preparation prepared;

    private Planner(AxisSpec axis, Preparation prepared) {
        this.axis = axis;
        this.prepared = prepared;
    }

    /**
     * Prepares an axis: a few microseconds for small stages, up to about a second for the largest.
     *
     * @param axis an axis of 1 to {@value Soundness#MOST_STAGES} stages
     * @throws IllegalArgumentException with one sentence if its numbers cannot be planned with: see {@link Soundness}
     */
    public static Planner of(AxisSpec axis) {
        return of(axis, CombinationLister.MOST_ENTRIES, KeySearch.LEAST_GAIN);
    }

    /**
     * As {@link #of(AxisSpec)}, listing fewer combinations, or searching them by what they cost for another gain than is
     * usual, which changes the time and never the answer.
     */
    static Planner of(AxisSpec axis, int mostEntries, double leastGain) {
        Optional<Unsound> problem = Soundness.problem(axis);
        if (problem.isPresent()) {
            throw new IllegalArgumentException(problem.get().sentence());
        }
        return new Planner(axis, new Preparation(axis, mostEntries, leastGain));
    }

    /** The axis planned on. */
    public AxisSpec axis() {
        return axis;
    }

    /**
     * Finds the move of least effort to a target, or the nearest positions and the reason.
     *
     * @param request what to find; its starting setting needs one index a stage
     * @throws IllegalArgumentException if the starting setting has another number of indices
     */
    public Answer plan(PlanRequest request) {
        refuseOtherStages(request.from());
        Moves moves = Moves.from(prepared, request.from(), request.last());
        long target = axis.scale().wrap(request.target());
        List<Window> windows = prepared.travel.within(target, request.tolerance());
        int places = (int) Math.min(Integer.MAX_VALUE, request.alternatives() + 1L);
        Wear readily = request.worn() == WornPolicy.ALLOW ? Wear.WORN : Wear.CLEAN;
        Wear atMost = request.worn() == WornPolicy.NEVER ? Wear.CLEAN : Wear.WORN;
        List<Candidate> found = EffortSearch.best(prepared.space(readily), windows, moves, places);
        if (found.isEmpty() && prepared.space(atMost) != prepared.space(readily)) {
            found = EffortSearch.best(prepared.space(atMost), windows, moves, places);
        }
        return found.isEmpty() ? nearest(target, windows, moves, atMost) : reached(target, found, moves);
    }

    /**
     * Prepares for many targets from one setting, which is worth it from a few targets on for each thousand ways to set the
     * fine stages.
     *
     * @param from where the stages stand now
     * @param last which way each stage moved last
     * @param worn when a setting over worn teeth may be offered
     * @throws IllegalArgumentException if the starting setting or the directions are of another number of stages
     */
    public TableQuery table(Setting from, Directions last, WornPolicy worn) {
        refuseOtherStages(from);
        if (last.size() != from.size()) {
            throw new IllegalArgumentException("The starting setting has " + from.size() + " indices, but " + last.size()
                    + " directions");
        }
        return new TableQuery(this, from, last, worn);
    }

    private void refuseOtherStages(Setting from) {
        if (from.size() != axis.stages().size()) {
            throw new IllegalArgumentException("The starting setting has " + from.size()
                    + " indices, but the axis has " + axis.stages().size() + " stages.");
        }
    }

    /** What was prepared for the axis. */
    Preparation prepared() {
        return prepared;
    }

    /**
     * The move to a given setting.
     *
     * @param to the setting to stand at
     * @param target the wanted position, from which the error is counted
     * @param from where the stages stand now
     * @param last which way each stage moved last
     * @return nothing where it stands on barred teeth or past the end of a row, or limits let no move lead there
     * @throws IllegalArgumentException if a setting or the directions are of another number of stages
     */
    public Optional<PlannedSetting> move(Setting to, long target, Setting from, Directions last) {
        refuseOtherStages(from);
        refuseOtherStages(to);
        for (StageTable table : prepared.tables) {
            if (!table.isUsable(to.index(table.stage))) {
                return Optional.empty();
            }
        }
        Moves moves = Moves.from(prepared, from, last);
        int[] indices = to.toArray();
        long extra = moves.extraEffort(indices, Long.MAX_VALUE);
        if (extra < 0) {
            return Optional.empty();
        }
        Candidate there = new Candidate(axis.position(to), 0, moves.effort(indices) + extra, 0, indices);
        return Optional.of(planned(there, axis.scale().wrap(target), moves));
    }

    /** The move to a setting that can be moved to. */
    PlannedSetting move(Candidate to, long target, Setting from, Directions last) {
        Moves moves = Moves.from(prepared, from, last);
        Candidate costed = new Candidate(to.place(), to.error(), moves.effort(to.indices()) + moves.extraEffort(to.indices(), Long.MAX_VALUE),
                to.worn(), to.indices());
        return planned(costed, axis.scale().wrap(target), moves);
    }

    private Answer reached(long target, List<Candidate> found, Moves moves) {
        List<PlannedSetting> settings = new ArrayList<>(found.size());
        for (Candidate candidate : found) {
            settings.add(planned(candidate, target, moves));
        }
        return new Answer.Reached(settings.get(0), settings.subList(1, settings.size()));
    }

    private Answer nearest(long target, List<Window> windows, Moves moves, Wear worst) {
        SearchSpace usable = prepared.space(worst);
        Optional<Candidate> below = beside(usable, target, true, moves);
        Optional<Candidate> above = beside(usable, target, false, moves);
        return new Answer.Nearest(below.map(c -> planned(c, target, moves)), above.map(c -> planned(c, target, moves)),
                reason(usable, target, windows, below.isPresent() && above.isPresent()));
    }

    private Optional<Candidate> beside(SearchSpace space, long target, boolean below, Moves moves) {
        return NearestSearch.nearest(space, prepared.travel.beside(target, below), below, moves);
    }

    /**
     * Why no setting was found; whatever way there is to a setting, it is a position of the axis.
     *
     * @param between whether there are settings to move to on both sides
     */
    private Reason reason(SearchSpace usable, long target, List<Window> windows, boolean between) {
        if (prepared.mayStrand() && isAny(usable, windows)) {
            return Reason.NO_MOVE;
        }
        SearchSpace all = prepared.space(Wear.BARRED);
        if (all != usable && isAny(all, windows)) {
            return Reason.UNUSABLE_TEETH;
        }
        boolean onBothSides = between || isAny(all, prepared.travel.beside(target, true))
                && isAny(all, prepared.travel.beside(target, false));
        boolean withinTravel = onBothSides && (axis.scale().turn() == 0 || prepared.travel.arcsReach(target));
        return withinTravel ? Reason.BETWEEN_STEPS : Reason.BEYOND_TRAVEL;
    }

    private boolean isAny(SearchSpace space, List<Window> windows) {
        return SettingLister.isAny(space, windows, prepared.tables.length);
    }

    /** A candidate with its steps. */
    PlannedSetting planned(Candidate candidate, long target, Moves moves) {
        long position = axis.scale().wrap(candidate.place());
        long error = axis.scale().turn() == 0 ? Saturated.subtract(position, target)
                : axis.scale().difference(position, target);
        List<Integer> worn = new ArrayList<>();
        for (StageTable table : prepared.tables) {
            if (table.worn(candidate.indices()[table.stage]) == 1) {
                worn.add(table.stage);
            }
        }
        return new PlannedSetting(Setting.of(candidate.indices()), position, error, candidate.effort(), worn,
                moves.steps(candidate.indices()));
    }
}
