// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.accuracy;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.analysis.accuracy.AxisBudget;
import pitchstack.analysis.accuracy.SettingFigures;
import pitchstack.core.accuracy.Watch;
import pitchstack.core.coverage.Outcome;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.QuantityException;

/** A question for a budget, which any thread may answer. */
final class Asked {
    private final Looked looked;
    private final BudgetForm.Ask ask;
    private final String typed;
    private final AxisAnalysis analysis;

    /**
     * What was found.
     *
     * @param looked at what
     * @param ask what was asked
     * @param figures of the setting
     * @param remark a sentence on how the setting was found, or empty
     */
    record Found(Looked looked, BudgetForm.Ask ask, SettingFigures figures, String remark) { }

    /** @param typed the position, where one is asked for */
    Asked(Looked looked, BudgetForm.Ask ask, String typed) {
        this.looked = looked;
        this.ask = ask;
        this.typed = typed;
        analysis = looked.session().analysis();
    }

    /** Why this cannot be asked, in a sentence; empty where it can. */
    String problem() {
        if (ask != BudgetForm.Ask.POSITION) {
            return looked.apart();
        }
        if (typed.isBlank()) {
            return "Type a position, or pick one of the saved targets.";
        }
        try {
            looked.spec().scale().parse(typed);
            return "";
        } catch (QuantityException e) {
            return e.getMessage();
        }
    }

    /** Finds the setting and works out its budget. */
    Outcome<Found> find(Progress progress) {
        return switch (ask) {
            case HERE -> new Outcome.Done<>(found(looked.budget().at(looked.now()), ""));
            case POSITION -> planned();
            case WORST -> worst(watch(progress));
        };
    }

    static Watch watch(Progress progress) {
        return (done, of) -> {
            progress.done(done, of);
            return !progress.isCancelled();
        };
    }

    private Outcome<Found> worst(Watch watch) {
        Optional<AxisBudget.Worst> worst = looked.budget().worst(looked.now(), watch);
        return worst.<Outcome<Found>>map(w -> new Outcome.Done<>(found(w.figures(), w.exhaustive()
                ? "Every setting was looked at."
                : "There are too many settings to look at each; no change of one stage makes this one worse.")))
                .orElseGet(Outcome.Cancelled::new);
    }

    private Outcome<Found> planned() {
        AxisSpec spec = looked.spec();
        long target = spec.scale().parse(typed);
        Answer answer = analysis.planner().orElseThrow().plan(new PlanRequest(target, spec.tolerance(), looked.now(),
                analysis.last(), WornPolicy.AVOID, 0));
        if (answer instanceof Answer.Reached reached) {
            return new Outcome.Done<>(found(looked.budget().at(reached.best().setting()), ""));
        }
        Answer.Nearest nearest = (Answer.Nearest) answer;
        Optional<PlannedSetting> next = Stream.concat(nearest.below().stream(), nearest.above().stream())
                .min(Comparator.comparingLong(p -> Math.abs(p.error())));
        return next.<Outcome<Found>>map(p -> new Outcome.Done<>(found(looked.budget().at(p.setting()),
                spec.scale().format(target) + " itself is not reached; this is the nearest.")))
                .orElseGet(() -> new Outcome.Refused<>(spec.scale().format(target) + " is not reached, and nothing"
                + " near it is."));
    }

    private Found found(SettingFigures figures, String remark) {
        return new Found(looked, ask, figures, remark);
    }
}
