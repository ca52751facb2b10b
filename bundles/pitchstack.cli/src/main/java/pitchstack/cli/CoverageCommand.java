// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.coverage.Coverage;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.Scale;
import pitchstack.export.StretchesCsv;
import pitchstack.export.StripSvg;

/** Tells which positions of the travel can be reached. */
@Command(name = "coverage", sortOptions = false, header = "Tells which part of the travel can be reached, and where gaps are.",
        customSynopsis = "pitchstack coverage FILE [--step S] [--at X] [--tolerance T]%n"
                + "                           [--out NAME.csv|NAME.svg [--force]]%n"
                + "                           [--bar TEETH]... [--wear TEETH]... [--targets LIST.csv]%n"
                + "                           [--axis NAME] [--temperature T] [--json]",
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n",
        description = "%nA position is reached where some setting comes within the tolerance of it: clean, or worn only, "
                + "where every such setting stands on worn teeth. Multiples of the step count from position 0. --out writes "
                + "every stretch as .csv, or draws the travel as .svg. With --bar or --wear the answer says too what that "
                + "would change, of the travel and of a list of targets; the file stays as it is.",
        footer = {"",
            "Examples:",
            "  pitchstack coverage fence.pitchstack",
            "  pitchstack coverage fence.pitchstack --step 0.010in --tolerance 0",
            "  pitchstack coverage fence.pitchstack --tolerance 0.005in --out strip.svg",
            "  pitchstack coverage fence.pitchstack --tolerance 0.005in --bar Rack:base:100-101",
            "",
            "Exit codes: 0 all reached, 1 not all, 2 bad input, 130 stopped. With --bar or --wear they are",
            "about what is supposed."})
final class CoverageCommand implements Callable<Integer> {
    @Mixin
    private FileOption file;

    @Mixin
    private CoverageOptions options;

    @Mixin
    private SupposedOptions supposition;

    @Mixin
    private OutOptions out;

    @Mixin
    private AxisOptions axis;

    @Mixin
    private AnswerOptions answers;

    @Override
    public Integer call() throws BadInputException, StoppedException {
        LoadedStack stack = file.load();
        AxisAnalysis analysis = axis.analysis(stack);
        stack.planner(analysis);
        AxisSpec spec = analysis.spec();
        Optional<OutFile> written = out.file(List.of("csv", "svg"));
        Mapped mapped = Mapped.of(spec, options, answers.progress());
        Optional<Supposed> supposed = supposition.ask(analysis, options, answers.progress());
        if (written.isPresent()) {
            written.get().write(text(written.get(), stack.heading(), mapped, supposed));
        }
        PrintWriter to = answers.out();
        if (answers.inJson()) {
            to.println(CoverageJson.text(mapped, supposed));
        } else {
            new CoverageText(to, mapped).write(stack.heading());
            supposed.ifPresent(one -> new SupposedText(to, mapped, one).write());
        }
        return supposed.map(Supposed::mapped).orElse(mapped).isAllReached() ? ExitCode.YES : ExitCode.NO;
    }

    private static String text(OutFile file, String title, Mapped mapped, Optional<Supposed> what)
            throws BadInputException {
        Scale scale = mapped.axis().scale();
        Coverage now = mapped.coverage();
        Optional<Coverage> supposed = what.map(one -> one.mapped().coverage());
        if (file.ending().equals("csv")) {
            return supposed.map(then -> StretchesCsv.of(scale, now.stretches(), then.stretches()))
                    .orElseGet(() -> StretchesCsv.of(scale, now.stretches()));
        }
        String heading = CoverageText.heading(title, mapped);
        return supposed.map(then -> StripSvg.of(heading, scale, now, then, what.get().words()))
                .orElseGet(() -> StripSvg.of(heading, scale, now))
                .orElseThrow(() -> new BadInputException("--out: there is no travel to draw."));
    }
}
