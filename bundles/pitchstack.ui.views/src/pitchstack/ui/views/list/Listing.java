// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import java.util.List;
import java.util.Optional;
import pitchstack.analysis.TargetStops;
import pitchstack.core.plan.Stop;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.QuantityException;
import pitchstack.model.Axis;
import pitchstack.model.Target;

/**
 * The targets of an axis in the order of its list, read into numbers.
 *
 * @param entries one for each target
 */
record Listing(List<Entry> entries) {
    /**
     * A target.
     *
     * @param target as the file has it
     * @param stop in numbers; empty where a text cannot be read
     * @param problem what cannot be read, in one sentence, or nothing
     */
    record Entry(Target target, Optional<Stop> stop, String problem) { }

    /** Reads the targets of an axis. */
    static Listing of(Axis axis, AxisSpec spec) {
        return new Listing(axis.getTargets().stream().map(target -> entry(target, spec)).toList());
    }

    private static Entry entry(Target target, AxisSpec spec) {
        try {
            return new Entry(target, Optional.of(TargetStops.stop(target, spec)), "");
        } catch (QuantityException e) {
            return new Entry(target, Optional.empty(), e.getMessage());
        }
    }

    /** The targets that can be planned, in order. */
    List<Entry> readable() {
        return entries.stream().filter(entry -> entry.stop().isPresent()).toList();
    }

    /** A text, or nothing where the file has none. */
    static String text(String text) {
        return text == null ? "" : text;
    }
}
