// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.check.Severity;

/** Checks every axis of a stack file. */
@Command(name = "check", sortOptions = false, header = "Tells what is wrong, or will disappoint, in a stack.",
        customSynopsis = "pitchstack check FILE [--axis NAME] [--temperature T] [--json]",
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
    @Mixin
    private FileOption file;

    @Mixin
    private AxisOptions axis;

    @Mixin
    private AnswerOptions answers;

    @Override
    public Integer call() throws BadInputException {
        LoadedStack stack = file.load();
        List<AxisAnalysis> analyses = axis.analyses(stack);
        PrintWriter out = answers.out();
        if (answers.inJson()) {
            out.println(FindingsJson.of(analyses));
        } else {
            new FindingsText(out).write(stack.heading(), analyses);
        }
        boolean clean = analyses.stream().flatMap(a -> a.findings().stream())
                .allMatch(f -> f.severity() == Severity.NOTE);
        return clean ? ExitCode.YES : ExitCode.NO;
    }
}
