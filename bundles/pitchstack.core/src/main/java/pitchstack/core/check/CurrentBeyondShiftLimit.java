// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;
import java.util.stream.IntStream;
import pitchstack.core.plan.Soundness;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;

/** Some bodies stand farther off each other than a shift limit allows. Moves can be planned from there, but not back. */
public final class CurrentBeyondShiftLimit implements Check {
    @Override
    public List<Finding> apply(Subject subject) {
        AxisSpec axis = subject.axis();
        Setting current = subject.current();
        boolean stands = current.size() == axis.stages().size() && Soundness.problem(axis).isEmpty()
                && IntStream.range(0, current.size())
                        .allMatch(j -> axis.stages().get(j).rows().meeting().contains(current.index(j)));
        return !stands ? List.of() : axis.shiftLimits().stream()
                .filter(limit -> Math.abs(shift(axis, current, limit)) > limit.limit())
                .map(limit -> finding(axis, shift(axis, current, limit), limit)).toList();
    }

    private static long shift(AxisSpec axis, Setting current, ShiftLimit limit) {
        return IntStream.rangeClosed(limit.lowest(), limit.highest())
                .mapToLong(j -> axis.stages().get(j).offset(current.index(j))).sum();
    }

    private static Finding finding(AxisSpec axis, long shift, ShiftLimit limit) {
        String by = axis.scale().formatSize(shift);
        String most = axis.scale().formatSize(limit.limit());
        String stages = limit.lowest() == limit.highest() ? "Stage " + (limit.lowest() + 1) + " stands"
                : "Stages " + (limit.lowest() + 1) + " to " + (limit.highest() + 1) + " together stand";
        return new Finding("current-beyond-shift-limit", Severity.WARNING, Place.AXIS, by, most, stages + " " + by
                + " off, beyond the shift limit of " + most + "; move back within it before work is done there.");
    }
}
