// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.analysis.accuracy.AxisBudget;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;

/** Which setting a budget is for, as typed. */
final class BudgetOptions {
    @Option(names = "--at", paramLabel = "X", description = "The position, by the setting of least effort from where the stages"
            + " stand. Default: where they stand.")
    private String at;

    @Option(names = "--setting", paramLabel = "I,J,...", description = "The setting, one index a stage, lowest first.")
    private String setting;

    @Option(names = "--worst", description = "The setting of largest uncertainty over the travel.")
    private boolean worst;

    @Option(names = "--assumptions", description = "List the model behind every line, and all that is assumed.")
    private boolean assumptions;

    /** Whether models and assumptions are wanted. */
    boolean withAssumptions() {
        return assumptions;
    }

    /**
     * The setting, and how it was chosen.
     *
     * @throws BadInputException if more than one is asked for, or it cannot be read or reached
     * @throws StoppedException if the search for the worst was stopped
     */
    Chosen choose(LoadedStack stack, AxisAnalysis analysis, AxisBudget budget, Progress progress)
            throws BadInputException, StoppedException {
        if ((at == null ? 0 : 1) + (setting == null ? 0 : 1) + (worst ? 1 : 0) > 1) {
            throw new BadInputException("Only one of --at, --setting and --worst can be given.");
        }
        AxisSpec spec = analysis.spec();
        if (at != null) {
            return reached(stack, analysis, TypedLength.read(spec.scale(), "--at", at));
        }
        if (setting != null) {
            return new Chosen(StartingSetting.typed("--setting", spec, setting), "the setting given");
        }
        Setting current = StartingSetting.inFile(spec, analysis.current());
        return worst ? worst(budget, current, progress) : new Chosen(current, "where the stages stand");
    }

    private static Chosen worst(AxisBudget budget, Setting current, Progress progress) throws BadInputException,
            StoppedException {
        if (!budget.allows(current)) {
            throw new BadInputException("--worst: the search starts from where the stages stand, and that is outside stops or"
                    + " limits or over barred teeth; move them first.");
        }
        Optional<AxisBudget.Worst> found = budget.worst(current, (done, of) -> {
            progress.done(done, of);
            return !progress.isCancelled();
        });
        AxisBudget.Worst worst = found.orElseThrow(StoppedException::new);
        return new Chosen(worst.figures().setting(), worst.exhaustive() ? "the worst of all settings"
                : "the worst found: no change of one stage makes it worse");
    }

    private Chosen reached(LoadedStack stack, AxisAnalysis analysis, long target) throws BadInputException {
        AxisSpec spec = analysis.spec();
        Setting from = StartingSetting.inFile(spec, analysis.current());
        Answer answer = stack.planner(analysis)
                .plan(new PlanRequest(target, spec.tolerance(), from, analysis.last(), WornPolicy.AVOID, 0));
        if (answer instanceof Answer.Reached reached) {
            return new Chosen(reached.best().setting(), "the setting of least effort for " + spec.scale().format(target));
        }
        Answer.Nearest nearest = (Answer.Nearest) answer;
        String near = Stream.concat(nearest.below().stream(), nearest.above().stream())
                .map(PlannedSetting::position).map(spec.scale()::format).collect(Collectors.joining(" and "));
        throw new BadInputException("--at: " + spec.scale().format(target) + " is not reached within "
                + spec.scale().formatSize(spec.tolerance()) + (near.isEmpty() ? "." : "; the nearest positions are " + near + "."));
    }

    /**
     * A setting that was chosen.
     *
     * @param setting which
     * @param how in words
     */
    record Chosen(Setting setting, String how) { }
}
