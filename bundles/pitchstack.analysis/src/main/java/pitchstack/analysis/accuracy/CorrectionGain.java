// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import pitchstack.core.coverage.Outcome;
import pitchstack.core.plan.Leg;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.SequenceAnswer;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.plan.Sequences;
import pitchstack.core.plan.Stop;
import pitchstack.core.plan.StopOrder;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;

/**
 * What corrected pitches buy on a list of targets: how far off the carriage really is where it is set by the pitches as they
 * were, and where it is once the plan knows better.
 *
 * @param stops in the order of the list
 */
public record CorrectionGain(List<Gained> stops) {
    /** Copies the list. */
    public CorrectionGain {
        stops = List.copyOf(stops);
    }

    /**
     * One target.
     *
     * @param stop what was to be reached
     * @param before how it was planned; empty if it was not reached
     * @param trulyOff the error of that setting by the corrected pitches, a count; empty if it was not reached
     * @param after how it is planned with the corrected pitches; empty if it is not reached
     */
    public record Gained(Stop stop, Optional<PlannedSetting> before, OptionalLong trulyOff, Optional<PlannedSetting> after) {
        /** Whether the old setting keeps the tolerance by the corrected pitches. */
        public boolean heldBefore() {
            return trulyOff.isPresent() && Math.abs(trulyOff.getAsLong()) <= stop.tolerance();
        }
    }

    /**
     * Plans a list twice, each stop from where the stages stand.
     *
     * @param before the axis as it was believed to be
     * @param after the same axis with corrected pitches
     * @throws IllegalArgumentException with a sentence if one of them cannot be planned on
     */
    public static Outcome<CorrectionGain> of(AxisSpec before, AxisSpec after, Setting from, Directions last,
            List<Stop> stops, Progress progress) {
        Function<AxisSpec, Outcome<List<Leg>>> plan = axis -> legs(axis, from, last, stops, progress);
        return plan.apply(before).then(old -> plan.apply(after).then(now -> {
            List<Gained> gained = new ArrayList<>();
            for (int i = 0; i < stops.size(); i++) {
                Stop stop = stops.get(i);
                OptionalLong off = old.get(i).move().map(move -> OptionalLong.of(after.scale().difference(
                        after.position(move.setting()), stop.target()))).orElse(OptionalLong.empty());
                gained.add(new Gained(stop, old.get(i).move(), off, now.get(i).move()));
            }
            return new Outcome.Done<>(new CorrectionGain(gained));
        }));
    }

    private static Outcome<List<Leg>> legs(AxisSpec axis, Setting from, Directions last, List<Stop> stops,
            Progress progress) {
        SequenceAnswer answer = Sequences.plan(Planner.of(axis), new SequenceRequest(stops, from, last, WornPolicy.AVOID,
                StopOrder.EACH_FROM_START, SequenceRequest.DEFAULT_MEMORY), progress);
        if (answer instanceof SequenceAnswer.Planned planned) {
            return new Outcome.Done<>(planned.legs());
        }
        return answer instanceof SequenceAnswer.Refused refused ? new Outcome.Refused<>(refused.sentence())
                : new Outcome.Cancelled<>();
    }

    /** How many of the targets the old settings hold by the corrected pitches. */
    public long heldBefore() {
        return stops.stream().filter(Gained::heldBefore).count();
    }

    /** How many targets are reached with the corrected pitches. */
    public long heldAfter() {
        return stops.stream().filter(one -> one.after().isPresent()).count();
    }

    /** The largest error of the old settings by the corrected pitches, a count; empty if none was reached. */
    public OptionalLong largestBefore() {
        return stops.stream().flatMapToLong(one -> one.trulyOff().stream()).map(Math::abs).max();
    }

    /** The largest error of the new plan, a count; empty if no target is reached. */
    public OptionalLong largestAfter() {
        return stops.stream().flatMap(one -> one.after().stream()).mapToLong(move -> Math.abs(move.error())).max();
    }
}
