// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The program without a command: it only tells what there is. */
@Command(name = "pitchstack", versionProvider = Version.class, sortOptions = false,
        subcommands = {PlanCommand.class, TableCommand.class, CoverageCommand.class, WearCommand.class, CheckCommand.class,
            BudgetCommand.class, FitCommand.class, EvaluateCommand.class, DrawCommand.class, CardCommand.class,
            PartCommand.class},
        header = "Finds the moves that set a positioner of toothed stages.",
        commandListHeading = "%nCommands:%n", optionListHeading = "%nOptions:%n",
        synopsisSubcommandLabel = "COMMAND",
        footer = {"",
            "Without arguments, pitchstack opens its window; with --window FILE, on that file.",
            "",
            "Examples:",
            "  pitchstack plan fence.pitchstack --at 37.625in",
            "  pitchstack table fence.pitchstack --targets list.csv",
            "  pitchstack coverage fence.pitchstack",
            "  pitchstack wear fence.pitchstack --targets list.csv",
            "  pitchstack check fence.pitchstack",
            "  pitchstack budget fence.pitchstack --worst",
            "  pitchstack fit fence.pitchstack --readings run.csv",
            "  pitchstack evaluate fence.pitchstack --readings run.csv",
            "  pitchstack draw fence.pitchstack --out fence.pdf",
            "  pitchstack card fence.pitchstack --out card.pdf",
            "  pitchstack part fence.pitchstack --set --out plate.3mf",
            "  pitchstack plan --help",
            "",
            "Exit codes: 0 reached or clean, 1 not reachable or findings, 2 bad input."})
final class PitchstackCommand implements Callable<Integer> {
    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help.")
    private boolean help;

    @Option(names = {"-V", "--version"}, versionHelp = true, description = "Show the version.")
    private boolean version;

    @Spec
    private CommandSpec spec;

    private final Watch watch;

    /** @param watch watches work that may take long */
    PitchstackCommand(Watch watch) {
        this.watch = watch;
    }

    /** Watches work that may take long. */
    Watch watch() {
        return watch;
    }

    @Override
    public Integer call() throws BadInputException {
        throw new BadInputException("A command is missing; write " + Complaints.commands(spec.commandLine())
                + ", or see pitchstack --help");
    }
}
