// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.ArrayList;
import java.util.List;

/** All checks, in the order in which a person mends what they find. */
public final class Checks {
    private static final List<Check> ALL = List.of(new PlannableCheck());

    private Checks() {
    }

    /** All checks. */
    public static List<Check> all() {
        return ALL;
    }

    /**
     * Applies every check to one axis.
     *
     * @param subject the axis, whatever its numbers
     * @return what was found, check by check
     */
    public static List<Finding> run(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        ALL.forEach(check -> findings.addAll(check.apply(subject)));
        return findings;
    }
}
