// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.SequenceAnswer;
import pitchstack.core.plan.SequenceAnswer.Planned;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.plan.Sequences;
import pitchstack.export.PlanCsv;

/** Plans a list of targets. */
@Command(name = "table", sortOptions = false, header = "Plans a whole list of targets with the least effort.",
        customSynopsis = "pitchstack table FILE [--targets LIST.csv] [--axis NAME] [--from I,J,...]%n"
                + "                        [--order given|free|one-by-one|from-start]%n"
                + "                        [--out NAME.csv [--force]] [--json]",
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n",
        description = "%nA list has a header with the columns name, position, tolerance and note in any order, or positions "
                + "alone; commas, semicolons or tabs; a decimal comma or point; a unit in the header, like position (mm), "
                + "in the cell, or else that of the file.",
        footer = {"",
            "Examples:",
            "  pitchstack table fence.pitchstack",
            "  pitchstack table fence.pitchstack --targets list.csv --order free --out plan.csv",
            "",
            "Exit codes: 0 all reached, 1 some left out or not read, 2 bad input."})
final class TableCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "The stack file.")
    private String file;

    @Option(names = "--axis", paramLabel = "NAME",
            description = "The axis to plan on; needed only where the file has several.")
    private String axis;

    @Mixin
    private TableOptions options;

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
        Optional<OutFile> written = options.out();
        StopList stops = options.stops(analysis);
        SequenceRequest request = options.request(analysis, stops);
        Planned planned = planned(Sequences.plan(planner, request, Progress.NONE));
        if (written.isPresent()) {
            written.get().write(PlanCsv.of(analysis.spec(), request.stops(), planned.legs()));
        }
        PrintWriter out = command.commandLine().getOut();
        if (json) {
            out.println(new TableJson(analysis.spec(), request).of(planned, stops.unread()));
        } else {
            new TableText(out, analysis.spec(), request).write(stack.title(), planned, stops.unread());
        }
        return planned.leftOut() == 0 && stops.bad() == 0 ? ExitCode.YES : ExitCode.NO;
    }

    private static Planned planned(SequenceAnswer answer) throws BadInputException {
        if (answer instanceof SequenceAnswer.Refused refused) {
            throw new BadInputException(refused.sentence());
        }
        return (Planned) answer;
    }
}
