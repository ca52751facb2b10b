// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import pitchstack.model.Axis;
import pitchstack.model.Target;

/**
 * Puts targets into the list of an axis, one behind the other.
 *
 * @param axis the axis
 * @param position where in its list the first shall stand, from 0 to the list's size
 * @param targets new targets, in no document yet
 * @param label what the person did
 */
public record AddTargets(Axis axis, int position, List<Target> targets, String label) implements Edit {
    /** Copies the list. */
    public AddTargets {
        targets = List.copyOf(targets);
    }

    @Override
    public void apply() {
        axis.getTargets().addAll(position, targets);
    }
}
