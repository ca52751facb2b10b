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
import pitchstack.core.stack.AxisSpec;
import pitchstack.export.StretchesCsv;
import pitchstack.export.StripSvg;

/** Tells which positions of the travel can be reached. */
@Command(name = "coverage", sortOptions = false, header = "Tells which part of the travel can be reached, and where gaps are.",
        customSynopsis = "pitchstack coverage FILE [--axis NAME] [--step S] [--tolerance T]%n"
                + "                           [--out NAME.csv|NAME.svg [--force]] [--json]",
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n",
        description = "%nA position is reached where some setting comes within the tolerance of it: clean, or worn only, where "
                + "every such setting stands on worn teeth. Multiples of the step count from position 0.",
        footer = {"",
            "Examples:",
            "  pitchstack coverage fence.pitchstack",
            "  pitchstack coverage fence.pitchstack --step 0.010in --tolerance 0",
            "  pitchstack coverage fence.pitchstack --tolerance 0.005in --out strip.svg",
            "",
            "Exit codes: 0 all reached, 1 not all, 2 bad input."})
final class CoverageCommand implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "The stack file.")
    private String file;

    @Option(names = "--axis", paramLabel = "NAME", description = "The axis to map; needed only where the file has several.")
    private String axis;

    @Mixin
    private CoverageOptions options;

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
        stack.planner(analysis);
        AxisSpec spec = analysis.spec();
        Optional<OutFile> written = options.out();
        Mapped mapped = Mapped.of(spec, options.tolerance(spec), options.step(spec));
        if (written.isPresent()) {
            written.get().write(text(written.get(), stack.title(), mapped));
        }
        PrintWriter out = command.commandLine().getOut();
        if (json) {
            out.println(new CoverageJson(mapped).text());
        } else {
            new CoverageText(out, mapped).write(stack.title());
        }
        return mapped.isAllReached() ? ExitCode.YES : ExitCode.NO;
    }

    private static String text(OutFile file, String title, Mapped mapped) throws BadInputException {
        if (file.ending().equals("csv")) {
            return StretchesCsv.of(mapped.axis().scale(), mapped.coverage().stretches());
        }
        int stretches = mapped.coverage().stretches().size();
        return StripSvg.of(CoverageText.heading(title, mapped), mapped.axis().scale(), mapped.coverage())
                .orElseThrow(() -> new BadInputException("--out: " + (stretches == 0 ? "there is no travel to draw."
                        : "the travel falls into " + stretches + " stretches, and a drawing holds " + StripSvg.MOST_STRETCHES
                                + "; ask for a larger tolerance, or write a .csv.")));
    }
}
