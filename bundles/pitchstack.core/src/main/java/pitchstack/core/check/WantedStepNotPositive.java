// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;

/** A wanted step is a distance. */
public final class WantedStepNotPositive implements Check {
    @Override
    public List<Finding> apply(Subject subject) {
        if (subject.axis().wantedStep().orElse(1) > 0) {
            return List.of();
        }
        String value = subject.axis().scale().format(subject.axis().wantedStep().getAsLong());
        return List.of(new Finding("wanted-step-not-positive", Severity.WARNING, Place.AXIS, value, "above 0",
                "The wanted step is " + value + "; enter a step above 0 or leave it out."));
    }
}
