// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.analysis.accuracy.PositioningSelection;
import pitchstack.analysis.accuracy.RunEvaluation;
import pitchstack.analysis.accuracy.RunReader;
import pitchstack.analysis.accuracy.RunReading;
import pitchstack.analysis.accuracy.Si;
import pitchstack.core.accuracy.evaluation.TargetVisits;
import pitchstack.core.accuracy.evaluation.Visit;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Direction;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.RotaryScale;
import pitchstack.core.units.Scale;
import pitchstack.export.ReadingList;
import pitchstack.export.ReadingsCsv;

/** Evaluates repeated readings after ISO 230-2. */
@Command(name = "evaluate", sortOptions = false, header = "Evaluates repeated readings after ISO 230-2.",
        customSynopsis = "pitchstack evaluate FILE --readings RUN.csv | --run ID [--axis NAME] [--json]%n"
                + "       pitchstack evaluate --readings VISITS.csv [--unit mm|in|deg] [--json]",
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n",
        description = "%nReversal B, repeatability R, systematic error E, mean error M and accuracy A of positioning, in one "
                + "direction and in both, and the figures of every position. With a stack file the readings have a column for "
                + "the index of each stage, and deviations count from where the file puts the carriage; without one they have a "
                + "column target. The standard asks for five visits from either side.",
        footer = {"",
            "Examples:",
            "  pitchstack evaluate plate.pitchstack --readings run.csv",
            "  pitchstack evaluate plate.pitchstack --run 2026-01-20 --json",
            "  pitchstack evaluate --readings visits.csv --unit mm",
            "",
            "Exit codes: 0 evaluated, 1 too few visits, 2 bad input."})
final class EvaluateCommand implements Callable<Integer> {
    private static final Map<String, Scale> UNITS = Map.of("mm", new LinearScale(LengthUnit.MM),
            "in", new LinearScale(LengthUnit.INCH), "deg", new RotaryScale(RotaryScale.ARC_SECONDS * 1_000_000));

    @Parameters(paramLabel = "FILE", arity = "0..1", description = "The stack file.")
    private String file;

    @Mixin
    private RunOptions runs;

    @Option(names = "--unit", paramLabel = "U", description = "Without FILE: what numbers without a unit mean. Default: mm.")
    private String unit;

    @Option(names = "--axis", paramLabel = "NAME", description = "The axis, where the file has several.")
    private String axis;

    @Mixin
    private AnswerOptions answers;

    @Override
    public Integer call() throws BadInputException {
        return file == null ? visits() : run();
    }

    private int run() throws BadInputException {
        if (unit != null) {
            throw new BadInputException("--unit is for readings without a stack file; the file has its own unit.");
        }
        LoadedStack stack = LoadedStack.load(file);
        AxisAnalysis analysis = stack.analysis(axis, Optional.empty());
        stack.planner(analysis);
        RunReading reading = RunReader.read(analysis.axis(), analysis.spec(), runs.run(stack.positioner(), analysis));
        if (!reading.unreadable().isEmpty()) {
            throw new BadInputException(String.join(" ", reading.unreadable()));
        }
        return tell(stack.heading() + ", axis “" + analysis.spec().name() + "”, run “" + reading.name() + "”",
                RunEvaluation.of(reading), analysis.spec());
    }

    private int visits() throws BadInputException {
        if (runs.readings() == null) {
            throw new BadInputException("Readings are missing; write --readings with a .csv file.");
        }
        Scale scale = UNITS.get(unit == null ? "mm" : unit.toLowerCase(Locale.ROOT));
        if (scale == null) {
            throw new BadInputException("--unit: “" + unit + "” is not a unit here; write mm, in or deg.");
        }
        AxisSpec bare = new AxisSpec("", scale, List.of(), 0, OptionalLong.empty(), OptionalLong.empty(), List.of(), 0,
                OptionalLong.empty());
        ReadingList list = ReadingsCsv.readTargets(TextFile.read("--readings", runs.readings()), bare);
        RunOptions.requireSound(list, "--readings", runs.readings());
        long silent = list.readings().stream().filter(row -> row.direction() == Direction.UNKNOWN).count();
        if (silent > 0) {
            throw new BadInputException("--readings: " + silent + (silent == 1 ? " row has" : " rows have")
                    + " no direction; write up or down in a column direction.");
        }
        List<TargetVisits> visits = TargetVisits.gather(list.readings().stream().map(row -> visit(row, scale)).toList());
        PositioningSelection selection = PositioningSelection.of(visits);
        return tell(runs.readings(), new RunEvaluation(selection.positioning(), List.of(), Optional.empty(),
                selection.remarks()), bare);
    }

    private static Visit visit(ReadingList.Row row, Scale scale) {
        return new Visit(Si.of(row.target(), scale), Si.of(scale.difference(scale.parse(row.value()), row.target()), scale),
                row.direction());
    }

    private int tell(String title, RunEvaluation evaluation, AxisSpec spec) {
        PrintWriter out = answers.out();
        if (answers.inJson()) {
            out.println(new EvaluateJson(evaluation, spec.scale()).text());
        } else {
            new EvaluateText(out, evaluation, spec).write(title);
        }
        return evaluation.positioning().isPresent() ? ExitCode.YES : ExitCode.NO;
    }
}
