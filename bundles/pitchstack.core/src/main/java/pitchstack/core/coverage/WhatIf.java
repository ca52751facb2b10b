// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
 * Asks what supposed marks would cost.
 *
 * @param axis the axis as it is; sound with and without the marks
 * @param marks the supposed marks
 * @param tolerance up to which error a position counts as reached, itself included; at least 0
 * @param from where the stages stand
 * @param last which way each moved last
 * @param stops a list to plan both times, each stop by itself from there; may be empty
 */
public record WhatIf(AxisSpec axis, List<WearMark> marks, long tolerance, Setting from, Directions last,
        List<Stop> stops) {
    /** The most positions at which efforts are compared, so that it stays quick. */
    static final long MOST_CELLS = 1 << 21;
    private static final int PIECES = 6;

    /** Copies the lists. */
    public WhatIf {
        marks = List.copyOf(marks);
        stops = List.copyOf(stops);
    }

    /**
     * Works it out: milliseconds for most axes, up to seconds for the largest.
     *
     * @throws IllegalArgumentException with one sentence if the numbers cannot be planned with
     */
    public Outcome<Supposition> answer(Progress progress) {
        AxisSpec marked = WearMark.onAll(axis, marks);
        return coverage(axis, new PartOf(progress, 0, PIECES)).then(now ->
                coverage(marked, new PartOf(progress, 1, PIECES)).then(supposed -> efforts(marked, now, supposed, progress)));
    }

    private Outcome<Coverage> coverage(AxisSpec one, Progress progress) {
        progress.done(0, 1);
        return Reach.of(one, progress).then(reach -> reach.coverage(tolerance, progress));
    }

    private Outcome<Supposition> efforts(AxisSpec marked, Coverage now, Coverage supposed, Progress progress) {
        return legs(axis, new PartOf(progress, 2, PIECES)).then(before ->
                legs(marked, new PartOf(progress, 3, PIECES)).then(after -> {
                    List<StopChange> changes = new ArrayList<>();
                    for (int i = 0; i < stops.size(); i++) {
                        changes.add(new StopChange(i, before.legs().get(i).move(), after.legs().get(i).move()));
                    }
                    Optional<MeanEffort> mean = mean(marked, now, progress);
                    return progress.isCancelled() ? new Outcome.Cancelled<>() : new Outcome.Done<>(new Supposition(now,
                            supposed, CoverageChange.between(now, supposed), changes, mean));
                }));
    }

    private Outcome<SequenceAnswer.Planned> legs(AxisSpec one, Progress progress) {
        SequenceRequest request = new SequenceRequest(stops, from, last, WornPolicy.AVOID, StopOrder.EACH_FROM_START,
                SequenceRequest.DEFAULT_MEMORY);
        SequenceAnswer answer = Sequences.plan(Planner.of(one), request, progress);
        if (answer instanceof SequenceAnswer.Planned planned) {
            return new Outcome.Done<>(planned);
        }
        return answer instanceof SequenceAnswer.Refused refused ? new Outcome.Refused<>(refused.sentence())
                : new Outcome.Cancelled<>();
    }

    /** At every wanted step, counted from the datum. */
    private Optional<MeanEffort> mean(AxisSpec marked, Coverage now, Progress progress) {
        long travel = now.summary().travel();
        if (axis.wantedStep().isEmpty() || travel / axis.wantedStep().getAsLong() > MOST_CELLS) {
            return Optional.empty();
        }
        Outcome<EffortMap> one = map(axis, new PartOf(progress, 4, PIECES));
        Outcome<EffortMap> two = map(marked, new PartOf(progress, 5, PIECES));
        return one instanceof Outcome.Done<EffortMap> before && two instanceof Outcome.Done<EffortMap> after
                ? MeanEffort.of(before.value(), after.value()) : Optional.empty();
    }

    private Outcome<EffortMap> map(AxisSpec one, Progress progress) {
        progress.done(0, 1);
        return EffortReach.of(one, from, progress)
                .then(reach -> reach.map(axis.datum(), axis.wantedStep().getAsLong(), tolerance, progress));
    }
}
