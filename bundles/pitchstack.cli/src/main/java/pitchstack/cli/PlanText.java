// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import pitchstack.core.plan.Answer.Nearest;
import pitchstack.core.plan.Answer.Reached;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Wording;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.TrueMinus;

/** An answer that a person can follow at the machine. */
final class PlanText {
    private final PrintWriter out;
    private final AxisSpec axis;
    private final PlanRequest request;
    private final Wording wording;

    /**
     * @param out takes the text
     * @param axis the axis that was planned on
     * @param request what was asked
     */
    PlanText(PrintWriter out, AxisSpec axis, PlanRequest request) {
        this.out = out;
        this.axis = axis;
        this.request = request;
        this.wording = new Wording(axis);
    }

    /**
     * Writes an answer.
     *
     * @param title the title of the stack
     * @param distance how far the target is from where the stages stand, where it was given so
     * @param answer the answer to the request
     */
    void write(String title, OptionalLong distance, Answer answer) {
        out.println(title + ", axis “" + axis.name() + "”");
        out.println("Now at: " + TrueMinus.in(axis.scale().format(axis.position(request.from())) + " ("
                + wording.setting(request.from()) + ")"));
        out.println("Target: " + TrueMinus.in(axis.scale().format(request.target())) + away(distance) + ", tolerance "
                + axis.scale().formatSize(request.tolerance()));
        if (answer instanceof Reached reached) {
            write("Reached", reached.best());
            writeAlternatives(reached.alternatives());
        } else if (answer instanceof Nearest nearest) {
            out.println();
            out.println("Not reachable: " + wording.reason(request.target(), request.tolerance(), nearest));
            writeNearest("Nearest below", nearest.below());
            writeNearest("Nearest above", nearest.above());
        }
    }

    /** On a rotary axis, where every way comes round, as on a linear one. */
    private String away(OptionalLong distance) {
        if (distance.isEmpty()) {
            return "";
        }
        long by = distance.getAsLong();
        return by == 0 ? ", where the carriage stands"
                : ", " + axis.scale().formatSize(by) + (by > 0 ? " above" : " below") + " where it stands";
    }

    private void writeAlternatives(List<PlannedSetting> alternatives) {
        for (int i = 0; i < alternatives.size(); i++) {
            write("Alternative " + (i + 1), alternatives.get(i));
        }
        if (alternatives.size() < request.alternatives()) {
            out.println();
            out.println(alternatives.isEmpty() ? "No other setting comes within tolerance."
                    : "No more settings come within tolerance.");
        }
    }

    private void writeNearest(String heading, Optional<PlannedSetting> planned) {
        if (planned.isPresent()) {
            write(heading, planned.get());
        } else {
            out.println();
            out.println(heading + ": none");
        }
    }

    private void write(String heading, PlannedSetting planned) {
        out.println();
        out.println(heading + ": " + wording.position(planned));
        List<String> steps = wording.steps(planned);
        if (steps.isEmpty()) {
            out.println("  Nothing to move: the stages stand there already.");
        }
        for (int i = 0; i < steps.size(); i++) {
            out.println("  " + (i + 1) + ". " + steps.get(i));
        }
        if (!steps.isEmpty()) {
            out.println("  Effort: " + wording.effort(planned));
        }
        wording.worn(planned).ifPresent(caution -> out.println("  Caution: " + caution));
    }
}
