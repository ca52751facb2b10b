// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.check.Severity;

/** Checks every axis of a stack file. */
@Command(name = "check", sortOptions = false, header = "Tells what is wrong, or will disappoint, in a stack.",
        customSynopsis = "pitchstack check FILE [--json]",
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n",
        description = "%nAn error must be mended before anything can be planned; with a warning the device will not do all "
                + "that is wanted of it; a note is worth knowing.",
        footer = {"",
            "Examples:",
            "  pitchstack check fence.pitchstack",
            "  pitchstack check fence.pitchstack --json",
            "",
            "Exit codes: 0 no error and no warning, 1 errors or warnings, 2 bad input."})
final class CheckCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "The stack file.")
    private String file;

    @Option(names = "--json", description = "Answer in JSON, for other programs.")
    private boolean json;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help.")
    private boolean help;

    @Spec
    private CommandSpec command;

    @Override
    public Integer call() throws BadInputException {
        LoadedStack stack = LoadedStack.load(file);
        List<AxisAnalysis> analyses = stack.analyses();
        PrintWriter out = command.commandLine().getOut();
        if (json) {
            out.println(FindingsJson.of(analyses));
        } else {
            new FindingsText(out).write(stack.title(), analyses);
        }
        boolean clean = analyses.stream().flatMap(a -> a.findings().stream())
                .allMatch(f -> f.severity() == Severity.NOTE);
        return clean ? ExitCode.YES : ExitCode.NO;
    }
}
