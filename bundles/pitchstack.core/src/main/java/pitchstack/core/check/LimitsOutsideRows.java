// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import pitchstack.core.plan.Soundness;
import pitchstack.core.stack.AxisSpec;

/** A stop beyond what the rows reach never acts, and one beyond the far end leaves nothing. Linear axes only. */
public final class LimitsOutsideRows implements Check {
    @Override
    public List<Finding> apply(Subject subject) {
        AxisSpec axis = subject.axis();
        List<Finding> findings = new ArrayList<>();
        if (axis.scale().turn() > 0 || Soundness.problem(axis).isPresent()) {
            return findings;
        }
        RowReach rows = RowReach.of(axis);
        look(findings, axis, "low", axis.low(), rows.lowest(), rows.highest());
        look(findings, axis, "high", axis.high(), rows.lowest(), rows.highest());
        return findings;
    }

    private static void look(List<Finding> findings, AxisSpec axis, String which, OptionalLong limit, long lowest,
            long highest) {
        if (limit.isEmpty() || (lowest <= limit.getAsLong() && limit.getAsLong() <= highest)) {
            return;
        }
        boolean below = limit.getAsLong() < lowest;
        boolean nothingLeft = below == which.equals("high");
        String value = axis.scale().format(limit.getAsLong());
        String end = axis.scale().format(below ? lowest : highest);
        findings.add(new Finding("limits-outside-rows", nothingLeft ? Severity.ERROR : Severity.WARNING, Place.AXIS,
                value, end, "The " + which + " travel limit " + value + " lies " + (below ? "below " : "above ") + end
                        + ", the " + (below ? "lowest" : "highest") + " position that the rows allow, "
                        + (nothingLeft ? "so no position is left; correct it." : "so it never acts; "
                                + "correct it or lengthen a row.")));
    }
}
