// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import java.util.OptionalLong;
import pitchstack.core.plan.SequenceAnswer.Planned;
import pitchstack.core.plan.StopOrder;
import pitchstack.core.plan.Wording;
import pitchstack.core.units.TrueMinus;

/**
 * What a planned list comes to, in sentences.
 *
 * @param plan the plan
 * @param unread how many targets could not be read
 */
record Figures(ListPlan plan, int unread) {
    /** All that is known. */
    String sentences() {
        Planned planned = plan.planned();
        return reached(planned) + effort(planned) + saved(planned) + bound(planned);
    }

    private String reached(Planned planned) {
        int all = planned.legs().size() + unread;
        int failed = planned.leftOut() + unread;
        String count = failed == 0 ? (all == 1 ? "The target is reached" : "All " + all + " targets are reached")
                : (all - failed) + " of " + all + " targets are reached, " + failed + (failed == 1 ? " is not" : " are not");
        String from = TrueMinus.in(plan.axis().scale().format(plan.axis().position(plan.request().from())));
        return count + (plan.request().order() == StopOrder.EACH_FROM_START ? ", each from " : ", beginning at ") + from + ".";
    }

    private String effort(Planned planned) {
        return plan.request().order() == StopOrder.EACH_FROM_START ? ""
                : " Effort of all moves " + Wording.effort(planned.effortMs()) + ".";
    }

    private String saved(Planned planned) {
        if (planned.oneByOne().isEmpty()) {
            return "";
        }
        Planned other = planned.oneByOne().get();
        String cost = Wording.effort(other.effortMs());
        OptionalLong saved = planned.savedMs();
        if (saved.isEmpty()) {
            return " One after another leaves out " + (other.leftOut() - planned.leftOut()) + " more.";
        }
        if (saved.getAsLong() == 0) {
            return " One after another costs the same.";
        }
        return saved.getAsLong() > 0
                ? " One after another costs " + cost + ", so that this saves " + Wording.effort(saved.getAsLong()) + "."
                : " One after another costs only " + cost + ", but stands on worn teeth more often.";
    }

    private String bound(Planned planned) {
        if (plan.request().order() != StopOrder.FREE || planned.leastMs().isEmpty()) {
            return "";
        }
        long gap = planned.effortMs() - planned.leastMs().getAsLong();
        return planned.isLeast() ? " No order costs less."
                : " Another order may cost up to " + Wording.effort(gap) + " less; none costs less than "
                        + Wording.effort(planned.leastMs().getAsLong()) + ".";
    }
}
