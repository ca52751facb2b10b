// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;
import java.util.Optional;
import pitchstack.core.check.CurrentBeyondTravel.Overrun;
import pitchstack.core.plan.Soundness;
import pitchstack.core.plan.Stop;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.Scale;

/**
 * A saved target lies farther beyond a stop, or beyond where the rows end, than its tolerance. Limits over several stages
 * may keep the carriage from more targets, and the steps of the stages from others; a plan of the list says so.
 */
public final class TargetBeyondTravel implements Check {
    @Override
    public List<Finding> apply(Subject subject) {
        AxisSpec axis = subject.axis();
        if (subject.targets().isEmpty() || Soundness.problem(axis).isPresent()) {
            return List.of();
        }
        RowReach rows = RowReach.of(axis);
        return subject.targets().stream().flatMap(target -> look(axis, rows, target).stream()).toList();
    }

    private static Optional<Finding> look(AxisSpec axis, RowReach rows, Stop target) {
        Scale scale = axis.scale();
        long position = scale.wrap(target.target());
        return CurrentBeyondTravel.beyond(axis, position).filter(found -> found.by() > target.tolerance())
                .map(found -> finding(scale, target, found, "the stop at %s; correct it, or move the stop."))
                .or(() -> rows.overrun(scale.turn(), position).filter(found -> found.by() > target.tolerance())
                        .map(found -> finding(scale, target, found,
                                "%s, where the rows end; correct it, or lengthen a row.")));
    }

    private static Finding finding(Scale scale, Stop target, Overrun overrun, String end) {
        String position = scale.format(scale.wrap(target.target()));
        String limit = scale.format(scale.wrap(overrun.stop()));
        String name = target.name().isBlank() ? "A target" : "The target “" + target.name().strip() + "”";
        return new Finding("target-beyond-travel", Severity.NOTE, Place.AXIS, position, limit, name + " at " + position
                + " lies " + scale.formatSize(overrun.by()) + " beyond " + String.format(end, limit));
    }
}
