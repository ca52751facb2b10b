// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.coverage.CoverageChange;
import pitchstack.core.coverage.WearMark;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.plan.StopOrder;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.AxisSpec;

/** What to suppose of the teeth, and which list to see what that would cost. */
final class WhatIfOptions {
    @Mixin
    private MarkOptions marks;

    @Mixin
    private TargetsOption targets;

    /**
     * What the marks would change; empty where there are none.
     *
     * @param now what is reached as it is
     * @param options what was asked of that
     * @throws BadInputException if an option cannot be read, or it is too much to map or plan
     * @throws StoppedException if it was stopped
     */
    Optional<WhatIf> whatIf(AxisAnalysis analysis, Planner planner, Mapped now, CoverageOptions options, Progress progress)
            throws BadInputException, StoppedException {
        AxisSpec axis = analysis.spec();
        List<WearMark> some = marks.on(axis);
        if (some.isEmpty()) {
            if (targets.isGiven()) {
                throw new BadInputException("--targets shows what marks cost a list; name the teeth with --bar or --wear.");
            }
            return Optional.empty();
        }
        AxisSpec marked = WearMark.onAll(axis, some);
        Mapped supposed = Mapped.of(marked, options.tolerance(axis), options.step(axis), progress);
        Optional<StopList> stops = targets.isGiven() || StopList.isInFile(analysis) ? Optional.of(targets.stops(analysis))
                : Optional.empty();
        Optional<EffortChange> effort = stops.isEmpty() ? Optional.empty()
                : Optional.of(EffortChange.of(planner, marked, request(analysis, stops.get()), progress));
        return Optional.of(new WhatIf(some, supposed, CoverageChange.between(now.coverage(), supposed.coverage()), effort,
                stops.map(StopList::unread).orElse(List.of())));
    }

    private static SequenceRequest request(AxisAnalysis analysis, StopList stops) throws BadInputException {
        return new SequenceRequest(stops.stops(), StartingSetting.inFile(analysis.spec(), analysis.current()), analysis.last(),
                WornPolicy.AVOID, StopOrder.GIVEN, SequenceRequest.DEFAULT_MEMORY);
    }
}
