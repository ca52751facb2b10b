// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.plan.Stop;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.QuantityException;
import pitchstack.model.Axis;
import pitchstack.model.Target;

/**
 * The targets of a file as stops to plan.
 *
 * @param stops those that can be read, in the order of the file
 * @param targets the target of each stop
 * @param unread one sentence for each target that cannot be read
 */
public record TargetStops(List<Stop> stops, List<Target> targets, List<String> unread) {
    /** Copies the lists. */
    public TargetStops {
        stops = List.copyOf(stops);
        targets = List.copyOf(targets);
        unread = List.copyOf(unread);
    }

    /** The targets of an axis that has been analysed. */
    public static TargetStops of(AxisAnalysis analysis) {
        return of(analysis.axis(), analysis.spec());
    }

    /** The targets of an axis that has been read into numbers. */
    static TargetStops of(Axis axis, AxisSpec spec) {
        List<Stop> stops = new ArrayList<>();
        List<Target> targets = new ArrayList<>();
        List<String> unread = new ArrayList<>();
        for (Target target : axis.getTargets()) {
            try {
                stops.add(stop(target, spec));
                targets.add(target);
            } catch (QuantityException e) {
                unread.add("Target “" + text(target.getName()) + "”: " + e.getMessage());
            }
        }
        return new TargetStops(stops, targets, unread);
    }

    /**
     * One target as a stop.
     *
     * @throws QuantityException if its position or tolerance cannot be read
     */
    public static Stop stop(Target target, AxisSpec axis) {
        long allowed = axis.tolerance(text(target.getTolerance()));
        return new Stop(text(target.getName()), axis.scale().parse(text(target.getPosition())), allowed);
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}
