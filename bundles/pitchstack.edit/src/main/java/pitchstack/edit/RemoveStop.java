// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import pitchstack.model.Axis;
import pitchstack.model.PitchstackPackage.Literals;

/**
 * Takes a stop off an axis, so that its rows alone end the travel on that side.
 *
 * @param axis the axis
 * @param high whether it is the stop at the high end
 */
public record RemoveStop(Axis axis, boolean high) implements Edit {
    @Override
    public String label() {
        return "Delete " + (high ? "high" : "low") + " stop";
    }

    @Override
    public void apply() {
        axis.eUnset(high ? Literals.AXIS__HIGH : Literals.AXIS__LOW);
    }
}
