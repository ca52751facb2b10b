// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;
import java.util.OptionalLong;
import pitchstack.core.plan.FineSettings;
import pitchstack.core.plan.Soundness;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.StageSpec;

/**
 * F fine settings cannot put more than F positions within one coarse pitch P, nor within a shorter travel, so a step s
 * everywhere needs at least P/s of them (the pigeonhole principle).
 */
public final class TooFewFineSettings implements Check {
    @Override
    public List<Finding> apply(Subject subject) {
        AxisSpec axis = subject.axis();
        if (axis.wantedStep().isEmpty() || axis.wantedStep().getAsLong() <= 0 || Soundness.problem(axis).isPresent()) {
            return List.of();
        }
        FineSettings fine = FineSettings.of(axis);
        StageSpec coarse = axis.stages().get(fine.coarse());
        long step = axis.wantedStep().getAsLong();
        long needed = fine.stretch() / step + (fine.stretch() % step == 0 ? 0 : 1);
        OptionalLong count = fine.count();
        if (count.isEmpty() || count.getAsLong() >= needed) {
            return List.of();
        }
        String stretch = fine.stretch() < coarse.pitch() ? "the travel"
                : "the pitch " + axis.scale().format(coarse.pitch()) + " of stage " + coarse.title(fine.coarse());
        return List.of(new Finding("too-few-fine-settings", Severity.WARNING, Place.AXIS, settings(count.getAsLong()),
                settings(needed), "The other stages can be set in " + ways(count.getAsLong())
                        + ", but a step of " + axis.scale().format(step) + " everywhere within " + stretch + " needs "
                        + needed
                        + "; lengthen their rows, add a stage or accept a coarser step."));
    }

    private static String settings(long count) {
        return count == 1 ? "1 fine setting" : count + " fine settings";
    }

    private static String ways(long count) {
        return count == 1 ? "1 way" : count + " ways";
    }
}
