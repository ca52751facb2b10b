// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.check.Severity;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.WornPolicy;

/** Plans the move to one target. */
@Command(name = "plan", sortOptions = false, header = "Finds the move of least effort to a target.",
        customSynopsis = "pitchstack plan FILE --at X [--axis NAME] [--from I,J,...] [--tolerance T]%n"
                + "                       [--worn allow|avoid|never] [--alternatives N] [--json]",
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n",
        description = "%nLengths take mm, in or um and fractions, like 742.3mm, 37.625in, \"37 5/8in\" or 20um; without a unit, "
                + "the unit of the file. Angles are in degrees, like 12.5 or \"12°34'56\\\"\".",
        footer = {"",
            "Examples:",
            "  pitchstack plan fence.pitchstack --at 37.625in",
            "  pitchstack plan fence.pitchstack --at \"37 5/8in\" --tolerance 0.002in --alternatives 3",
            "  pitchstack plan fence.pitchstack --at 37.625in --from 12,-3 --worn never --json",
            "  pitchstack plan grid.pitchstack --axis X --at=-1mm",
            "",
            "Exit codes: 0 reached, 1 not reachable, 2 bad input."})
final class PlanCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "The stack file.")
    private String file;

    @Option(names = "--axis", paramLabel = "NAME",
            description = "The axis to plan on; needed only where the file has several.")
    private String axis;

    @Mixin
    private PlanOptions options;

    @Option(names = "--json", description = "Answer in JSON, for other programs.")
    private boolean json;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help.")
    private boolean help;

    @Spec
    private CommandSpec command;

    @Override
    public Integer call() throws BadInputException {
        LoadedStack stack = LoadedStack.load(file);
        AxisAnalysis analysis = stack.analysis(axis);
        Planner planner = stack.planner(analysis);
        PlanRequest request = options.request(analysis.spec(), analysis.current(), analysis.last());
        Answer answer = planner.plan(request);
        PrintWriter out = command.commandLine().getOut();
        if (json) {
            out.println(new PlanJson(analysis.spec(), request, options.listsAlternatives()).of(answer));
        } else {
            new PlanText(out, analysis.spec(), request).write(stack.title(), answer);
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
