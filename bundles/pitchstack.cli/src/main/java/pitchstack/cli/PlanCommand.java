// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.check.Severity;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.WornPolicy;

/** Plans the move to one target. */
@Command(name = "plan", sortOptions = false, header = "Finds the move of least effort to a target.",
        customSynopsis = "pitchstack plan FILE --at X | --by D [--tolerance T] [--alternatives N] [--from I,J,...]%n"
                + "                       [--worn allow|avoid|never] [--approach forward|back|either]%n"
                + "                       [--axis NAME] [--temperature T] [--json]",
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n",
        description = "%nLengths take mm, in or um and fractions, like 742.3mm, 37.625in, \"37 5/8in\" or 20um; without a unit, "
                + "the unit of the file. Angles are in degrees, like 12.5 or \"12°34'56\\\"\".",
        footer = {"",
            "Examples:",
            "  pitchstack plan fence.pitchstack --at 37.625in",
            "  pitchstack plan fence.pitchstack --at \"37 5/8in\" --tolerance 0.002in --alternatives 3",
            "  pitchstack plan fence.pitchstack --at 37.625in --from 12,-3 --worn never --json",
            "  pitchstack plan shim.pitchstack --by 20um --approach forward",
            "  pitchstack plan grid.pitchstack --axis X --at=-1mm --temperature 28",
            "",
            "Exit codes: 0 reached, 1 not reachable, 2 bad input."})
final class PlanCommand implements Callable<Integer> {
    @Mixin
    private FileOption file;

    @Mixin
    private PlanOptions options;

    @Mixin
    private MoveOptions moves;

    @Mixin
    private AxisOptions axis;

    @Mixin
    private AnswerOptions answers;

    @Override
    public Integer call() throws BadInputException {
        LoadedStack stack = file.load();
        AxisAnalysis analysis = axis.analysis(stack, moves.approach());
        Planner planner = stack.planner(analysis);
        PlanRequest request = options.request(analysis, moves);
        Answer answer = planner.plan(request);
        PrintWriter out = answers.out();
        if (answers.inJson()) {
            out.println(new PlanJson(analysis.spec(), request, options.listsAlternatives()).of(answer));
        } else {
            new PlanText(out, analysis.spec(), request).write(stack.heading(), options.by(analysis.spec()), answer);
            tellOfWornTeeth(out, planner, request, answer);
            tellOfFindings(out, stack, analysis);
        }
        return answer instanceof Answer.Reached ? ExitCode.YES : ExitCode.NO;
    }

    /** Says what refusing worn teeth has cost, where it has cost the target. */
    private static void tellOfWornTeeth(PrintWriter out, Planner planner, PlanRequest request, Answer answer) {
        PlanRequest overWorn = new PlanRequest(request.target(), request.tolerance(), request.from(), request.last(),
                WornPolicy.AVOID, 0);
        if (request.worn() == WornPolicy.NEVER && answer instanceof Answer.Nearest
                && planner.plan(overWorn) instanceof Answer.Reached) {
            out.println();
            out.println("Over worn teeth the target can be reached: --worn avoid");
        }
    }

    private static void tellOfFindings(PrintWriter out, LoadedStack stack, AxisAnalysis analysis) {
        long warnings = analysis.findings().stream().filter(f -> f.severity() == Severity.WARNING).count();
        if (warnings > 0) {
            out.println();
            out.println("This axis has " + warnings + (warnings == 1 ? " warning" : " warnings") + "; to read "
                    + (warnings == 1 ? "it: " : "them: ") + stack.checkCommand());
        }
    }
}
