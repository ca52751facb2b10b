// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.analysis.accuracy.CorrectionGain;
import pitchstack.analysis.accuracy.Corrections;
import pitchstack.analysis.accuracy.RunStudy;
import pitchstack.core.accuracy.fit.PitchFit;
import pitchstack.core.coverage.Outcome;
import pitchstack.model.Axis;
import pitchstack.model.MeasurementRun;

/** Fits the pitches of an axis to readings. */
@Command(name = "fit", sortOptions = false, header = "Fits the pitch of every stage to readings, and plans what to read.",
        customSynopsis = "pitchstack fit FILE --readings RUN.csv | --run ID [--uncertainty U] [--instrument-scale PPM]%n"
                + "                      [--run-temperature T] [--apply [--index-errors]] [--plan NAME.csv|NAME.html]%n"
                + "                      [--axis NAME] [--json]%n"
                + "       pitchstack fit FILE --plan NAME.csv|NAME.html [--points N] [--runs N]%n"
                + "       pitchstack fit FILE --spans",
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n",
        description = "%nWeighted least squares with an intercept: a correction of every pitch with its interval of 95 %%, readings "
                + "that are too far off, errors of single indices where the readings say them, and what the corrections would "
                + "buy on the targets of the file. The file stays as it is unless --apply is given. Where the readings cannot "
                + "tell a stage, the answer says which settings to read too. --plan writes what to read, to fill in.",
        footer = {"",
            "Examples:",
            "  pitchstack fit plate.pitchstack --plan plan.csv --points 5 --runs 5",
            "  pitchstack fit plate.pitchstack --readings plan.csv --uncertainty 1um --instrument-scale 2",
            "  pitchstack fit plate.pitchstack --readings plan.csv --apply",
            "  pitchstack fit plate.pitchstack --run 2026-01-20 --json",
            "  pitchstack fit plate.pitchstack --spans",
            "",
            "Exit codes: 0 fitted or written, 1 the readings do not tell every stage, 2 bad input, 130 stopped."})
final class FitCommand implements Callable<Integer> {
    @Mixin
    private FileOption file;

    @Mixin
    private RunOptions runs;

    @Option(names = "--apply", description = "Write readings and corrections into the file; the old one is kept as FILE.bak~.")
    private boolean apply;

    @Option(names = "--index-errors", description = "With --apply: errors of single indices too, in place of those in the file.")
    private boolean indexErrors;

    @Option(names = "--spans", description = "Tell the scale of every print set-up from the spans measured on it.")
    private boolean spans;

    @Mixin
    private MeasuringPlanOptions plan;

    @Option(names = "--axis", paramLabel = "NAME", description = "The axis, where the file has several.")
    private String axis;

    @Mixin
    private AnswerOptions answers;

    @Override
    public Integer call() throws BadInputException, StoppedException {
        LoadedStack stack = file.load();
        PrintWriter out = answers.out();
        if (spans) {
            new SpansText(out, answers.inJson()).write(stack);
            return ExitCode.YES;
        }
        AxisAnalysis analysis = stack.analysis(axis, Optional.empty());
        stack.planner(analysis);
        if (!runs.isGiven() && plan.isGiven()) {
            plan.write(out, stack, analysis, List.of());
            return ExitCode.YES;
        }
        MeasurementRun run = runs.run(stack.positioner(), analysis);
        RunStudy.Question question = RunStudy.Question.of(stack.positioner(), analysis.axis(),
                analysis.axis().getRuns().indexOf(run));
        RunStudy study = study(question);
        Optional<CorrectionGain> gain = study.fit().fit().isEmpty() ? Optional.empty()
                : Optional.of(done(question.gain(study.fit(), indexErrors, answers.progress())));
        if (apply && gain.isPresent()) {
            apply(stack, analysis.axis(), run, study, gain, out);
        } else {
            tell(stack, analysis, study, gain, out);
        }
        if (plan.isGiven()) {
            plan.write(out, stack, analysis, study.fit().proposals());
        }
        return gain.isPresent() ? ExitCode.YES : ExitCode.NO;
    }

    private RunStudy study(RunStudy.Question question) throws BadInputException, StoppedException {
        RunStudy study = done(question.answer(answers.progress()));
        if (!study.run().unreadable().isEmpty()) {
            throw new BadInputException(String.join(" ", study.run().unreadable()));
        }
        return study;
    }

    private static <T> T done(Outcome<T> outcome) throws BadInputException, StoppedException {
        if (outcome instanceof Outcome.Done<T> done) {
            return done.value();
        }
        if (outcome instanceof Outcome.Refused<T> refused) {
            throw new BadInputException(refused.why());
        }
        throw new StoppedException();
    }

    private void tell(LoadedStack stack, AxisAnalysis analysis, RunStudy study, Optional<CorrectionGain> gain,
            PrintWriter out) {
        Optional<PitchFit> fit = study.fit().fit();
        List<Corrections.Change> changes = fit.isPresent() ? Corrections.changes(analysis.axis(), study.fit(), indexErrors)
                : List.of();
        if (answers.inJson()) {
            out.println(new FitJson(analysis.spec(), study, gain, changes).text(Optional.empty()));
        } else {
            new FitText(out, analysis.spec(), study, gain, changes).write(stack.heading());
        }
    }

    private void apply(LoadedStack stack, Axis of, MeasurementRun run, RunStudy study, Optional<CorrectionGain> gain,
            PrintWriter out) throws BadInputException {
        List<Corrections.Change> changes = Corrections.apply(of, run, study.fit(), indexErrors);
        String backup = stack.save();
        if (answers.inJson()) {
            out.println(new FitJson(study.run().spec(), study, gain, changes).text(Optional.of(backup)));
            return;
        }
        new FitText(out, study.run().spec(), study, gain, changes).write(stack.heading());
        out.println();
        out.println("Written into the file: run “" + run.getId() + "” and the corrections above"
                + (indexErrors ? ", with errors of single indices" : "") + ". The file before is kept as " + backup + ".");
    }
}
