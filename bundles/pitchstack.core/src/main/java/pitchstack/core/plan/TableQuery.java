// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.Wear;

/**
 * Finds moves to many targets from one setting. What depends on the setting alone is worked out once: what each offset of
 * the fine stages costs. A target then asks for a look at each index of the coarse stage that can come near it, from where
 * that stands outwards, and only while its cost alone can still win. Every answer is the one {@link Planner#plan} gives
 * without alternatives. One object serves one thread; several may share a planner.
 */
public final class TableQuery {
    /** Targets for which the preparation takes about as long as a search for each: as many as entries divided by this. */
    private static final int ENTRIES_PER_TARGET = 1000;

    private final Planner planner;
    private final Preparation prepared;
    private final Setting from;
    private final Directions last;
    private final WornPolicy worn;
    private final Moves moves;
    /** With teeth no worse than are readily taken; null where each target has to be searched for. */
    private final TableSearch readily;
    private TableSearch atMost;
    /** The one that found the last target. */
    private TableSearch in;

    TableQuery(Planner planner, Setting from, Directions last, WornPolicy worn) {
        this.planner = planner;
        this.prepared = planner.prepared();
        this.from = from;
        this.last = last;
        this.worn = worn;
        this.moves = Moves.from(prepared, from, last);
        SearchSpace space = prepared.space(worn == WornPolicy.ALLOW ? Wear.WORN : Wear.CLEAN);
        this.readily = space.separable ? new TableSearch(space, moves) : null;
    }

    /** Whether to prepare for a number of targets takes less time than to search for each. */
    static boolean pays(Planner planner, int targets) {
        return (long) targets * ENTRIES_PER_TARGET >= planner.prepared().space(Wear.WORN).list.size();
    }

    /**
     * The least effort of reaching a target, in milliseconds; empty if it is not reached.
     *
     * @param target a count of the axis's scale
     * @param tolerance the largest error that counts as reached, itself included; at least 0
     */
    public OptionalLong effortMs(long target, long tolerance) {
        if (readily == null) {
            return planned(target, tolerance).map(p -> OptionalLong.of(p.effortMs())).orElse(OptionalLong.empty());
        }
        return search(target, tolerance) ? OptionalLong.of(in.effort()) : OptionalLong.empty();
    }

    /**
     * The setting of least effort for a target; empty if it is not reached.
     *
     * @param target a count of the axis's scale
     * @param tolerance the largest error that counts as reached, itself included; at least 0
     */
    public Optional<TableEntry> find(long target, long tolerance) {
        if (readily == null) {
            return planned(target, tolerance)
                    .map(p -> new TableEntry(p.setting(), p.position(), p.error(), p.effortMs()));
        }
        if (!search(target, tolerance)) {
            return Optional.empty();
        }
        Candidate found = in.best();
        long position = planner.axis().scale().wrap(found.place());
        return Optional.of(new TableEntry(Setting.of(found.indices()), position, found.error(), found.effort()));
    }

    /**
     * The whole answer for a target, the steps of the move included, or the nearest positions and the reason.
     *
     * @param target a count of the axis's scale
     * @param tolerance the largest error that counts as reached, itself included; at least 0
     */
    public Answer answer(long target, long tolerance) {
        if (readily == null || !search(target, tolerance)) {
            return planner.plan(request(target, tolerance));
        }
        return new Answer.Reached(planner.planned(in.best(), planner.axis().scale().wrap(target), moves), List.of());
    }

    private Optional<PlannedSetting> planned(long target, long tolerance) {
        return planner.plan(request(target, tolerance)) instanceof Answer.Reached reached ? Optional.of(reached.best())
                : Optional.empty();
    }

    private PlanRequest request(long target, long tolerance) {
        return new PlanRequest(target, tolerance, from, last, worn, 0);
    }

    private boolean search(long target, long tolerance) {
        if (tolerance < 0) {
            throw new IllegalArgumentException("The tolerance must be at least 0, not " + tolerance);
        }
        List<Window> windows = prepared.travel.within(planner.axis().scale().wrap(target), tolerance);
        in = readily;
        if (!in.search(windows) && worn == WornPolicy.AVOID && prepared.space(Wear.WORN) != readily.space()) {
            in = atMost();
            return in.search(windows);
        }
        return in.isFound();
    }

    private TableSearch atMost() {
        if (atMost == null) {
            atMost = new TableSearch(prepared.space(Wear.WORN), moves);
        }
        return atMost;
    }
}
