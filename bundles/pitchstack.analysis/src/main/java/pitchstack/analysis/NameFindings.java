// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import pitchstack.core.check.Finding;
import pitchstack.core.check.Place;
import pitchstack.core.check.Severity;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;
import pitchstack.model.Target;

/** Looks for names that do not tell apart what they name. They are no numbers, so that no check of the core sees them. */
final class NameFindings {
    private NameFindings() {
    }

    /** What is found about the name of an axis and the names of its targets. */
    static List<Finding> of(Positioner positioner, Axis axis) {
        List<Finding> findings = new ArrayList<>();
        long axes = positioner.getAxes().stream().filter(other -> Objects.equals(name(other), name(axis))).count();
        if (axes > 1) {
            findings.add(new Finding("axis-name-twice", Severity.WARNING, Place.AXIS, axes + " axes", "1 axis",
                    axes + " axes are named “" + name(axis) + "”, so that the command line cannot tell them apart; rename "
                            + (axes == 2 ? "one." : "all but one.")));
        }
        targets(axis).forEach((name, count) -> {
            if (count > 1) {
                findings.add(new Finding("target-name-twice", Severity.NOTE, Place.AXIS, count + " targets", "1 target",
                        count + " targets are named “" + name + "”; rename them to tell them apart in lists."));
            }
        });
        return findings;
    }

    /** How many targets have each name, in the order of the file; those without a name are not counted. */
    private static Map<String, Integer> targets(Axis axis) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Target target : axis.getTargets()) {
            if (target.getName() != null && !target.getName().isBlank()) {
                counts.merge(target.getName().strip(), 1, Integer::sum);
            }
        }
        return counts;
    }

    private static String name(Axis axis) {
        return axis.getName() == null ? "" : axis.getName().strip();
    }
}
