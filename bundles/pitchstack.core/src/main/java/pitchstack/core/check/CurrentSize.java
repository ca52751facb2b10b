// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;

/** The current setting needs one index a stage. */
public final class CurrentSize implements Check {
    @Override
    public List<Finding> apply(Subject subject) {
        int indices = subject.current().size();
        int stages = subject.axis().stages().size();
        return indices == stages ? List.of() : List.of(new Finding("current-size", Severity.ERROR, Place.AXIS,
                indices + " indices", stages + " indices", "The current setting has " + indices
                        + " indices, but the axis has " + stages + " stages; give each stage its index."));
    }
}
