// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.List;
import pitchstack.core.plan.Leg;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.SequenceAnswer.Planned;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.plan.Stop;
import pitchstack.core.plan.StopOrder;
import pitchstack.core.plan.Wording;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.TrueMinus;
import pitchstack.export.PlanCsv;

/** A planned list that a person can follow at the machine. */
final class TableText {
    private final PrintWriter out;
    private final AxisSpec axis;
    private final SequenceRequest request;
    private final Wording wording;

    /**
     * @param out takes the text
     * @param axis the axis that was planned on
     * @param request what was asked
     */
    TableText(PrintWriter out, AxisSpec axis, SequenceRequest request) {
        this.out = out;
        this.axis = axis;
        this.request = request;
        this.wording = new Wording(axis);
    }

    /** The order in words. */
    static String words(StopOrder order) {
        return switch (order) {
            case EACH_FROM_START -> "each from the start";
            case ONE_BY_ONE -> "one by one";
            case GIVEN -> "in the given order";
            case FREE -> "in the cheapest order";
        };
    }

    /** Writes a plan. */
    void write(String title, Planned planned, List<String> unread) {
        int stops = request.stops().size();
        out.println(title + ", axis “" + axis.name() + "”: " + stops + (stops == 1 ? " stop " : " stops ")
                + words(request.order()));
        out.println("Now at: " + TrueMinus.in(axis.scale().format(axis.position(request.from())) + " ("
                + wording.setting(request.from()) + ")"));
        planned.legs().forEach(this::write);
        out.println();
        writeTotals(planned);
        if (!unread.isEmpty()) {
            out.println();
            unread.forEach(out::println);
        }
    }

    private void write(Leg leg) {
        Stop stop = request.stops().get(leg.stop());
        out.println();
        out.println((leg.stop() + 1) + ". " + (stop.name().isBlank() ? "" : stop.name() + ", ")
                + TrueMinus.in(axis.scale().format(stop.target())));
        if (leg.move().isEmpty()) {
            out.println("  Left out: " + PlanCsv.why(axis, stop, leg));
            return;
        }
        PlannedSetting move = leg.move().get();
        out.println("  Reached: " + wording.position(move));
        wording.steps(move).forEach(step -> out.println("  " + step));
        out.println(move.steps().isEmpty() ? "  Nothing to move." : "  Effort: " + wording.effort(move));
        wording.worn(move).ifPresent(caution -> out.println("  Caution: " + caution));
    }

    private void writeTotals(Planned planned) {
        int stops = planned.legs().size();
        out.println("Reached: " + (stops - planned.leftOut()) + " of " + stops);
        out.println("Effort of all moves: " + Wording.effort(planned.effortMs()));
        planned.savedMs().ifPresent(saved -> out.println("One by one: "
                + Wording.effort(planned.oneByOne().orElseThrow().effortMs()) + ", so that this saves "
                + Wording.effort(saved)));
        if (request.order() == StopOrder.FREE && planned.leastMs().isPresent()) {
            out.println(planned.isLeast() ? "No order costs less."
                    : "Every order costs at least " + Wording.effort(planned.leastMs().getAsLong()) + ".");
        }
    }
}
