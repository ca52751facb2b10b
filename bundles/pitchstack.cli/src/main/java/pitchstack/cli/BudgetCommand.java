// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.analysis.accuracy.AccuracyReader;
import pitchstack.analysis.accuracy.AccuracyReading;
import pitchstack.analysis.accuracy.AxisBudget;

/** Tells how well a position is known. */
@Command(name = "budget", sortOptions = false, header = "Tells how well a position is known, and what spoils it.",
        customSynopsis = "pitchstack budget FILE [--at X | --setting I,J,... | --worst] [--assumptions]%n"
                + "                         [--axis NAME] [--temperature T] [--json]",
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n",
        description = "%nAn uncertainty budget after the GUM (JCGM 100): every contribution with its standard uncertainty in the "
                + "position, its share, its type (A from readings, B from other knowledge) and whether it repeats, so that "
                + "measuring can take it out. It is computed from the file, not measured; what the file does not say is "
                + "assumed, and --assumptions lists all of it.",
        footer = {"",
            "Examples:",
            "  pitchstack budget plate.pitchstack",
            "  pitchstack budget plate.pitchstack --at 100mm --assumptions",
            "  pitchstack budget plate.pitchstack --setting 40,3,-3,0,0 --json",
            "  pitchstack budget fence.pitchstack --worst",
            "",
            "Exit codes: 0 answered, 2 bad input, 130 stopped."})
final class BudgetCommand implements Callable<Integer> {
    @Mixin
    private FileOption file;

    @Mixin
    private BudgetOptions options;

    @Mixin
    private AxisOptions axis;

    @Mixin
    private AnswerOptions answers;

    @Override
    public Integer call() throws BadInputException, StoppedException {
        LoadedStack stack = file.load();
        AxisAnalysis analysis = axis.analysis(stack);
        stack.planner(analysis);
        AccuracyReading reading = AccuracyReader.read(stack.positioner(), analysis);
        if (!reading.unreadable().isEmpty()) {
            throw new BadInputException(String.join(" ", reading.unreadable()));
        }
        AxisBudget budget = new AxisBudget(reading);
        BudgetOptions.Chosen chosen = options.choose(stack, analysis, budget, answers.progress());
        PrintWriter out = answers.out();
        if (answers.inJson()) {
            out.println(new BudgetJson(reading, chosen, budget.at(chosen.setting())).text());
        } else {
            new BudgetText(out, reading, chosen, budget.at(chosen.setting()))
                    .write(stack.heading(), options.withAssumptions());
        }
        return ExitCode.YES;
    }
}
