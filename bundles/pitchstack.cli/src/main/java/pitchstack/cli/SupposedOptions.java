// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.coverage.WearMark;
import pitchstack.core.coverage.WhatIf;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.Stop;
import pitchstack.core.stack.AxisSpec;

/** What to suppose of the teeth, and which list to see what that would cost. */
final class SupposedOptions {
    @Mixin
    private MarkOptions marks;

    @Mixin
    private TargetsOption targets;

    /**
     * What the marks would change; empty where there are none.
     *
     * @param options what is asked of the travel
     * @throws BadInputException if an option cannot be read, or it is too much to map or plan
     * @throws StoppedException if it was stopped
     */
    Optional<Supposed> ask(AxisAnalysis analysis, CoverageOptions options, Progress progress)
            throws BadInputException, StoppedException {
        AxisSpec axis = analysis.spec();
        List<WearMark> some = marks.on(axis);
        if (some.isEmpty()) {
            if (targets.isGiven()) {
                throw new BadInputException("--targets shows what marks cost a list; name the teeth with --bar or --wear.");
            }
            return Optional.empty();
        }
        Optional<StopList> list = targets.isGiven() || StopList.isInFile(analysis) ? Optional.of(targets.stops(analysis))
                : Optional.empty();
        List<Stop> stops = list.map(StopList::stops).orElse(List.of());
        Mapped mapped = Mapped.of(WearMark.onAll(axis, some), options, progress);
        WhatIf question = new WhatIf(axis, some, options.tolerance(axis), StartingSetting.inFile(axis, analysis.current()),
                analysis.last(), stops);
        return Optional.of(new Supposed(some, mapped, Mapped.done(question.answer(progress)), stops,
                list.map(StopList::unread).orElse(List.of())));
    }
}
