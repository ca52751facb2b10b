// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import org.eclipse.emf.ecore.EAttribute;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;
import pitchstack.model.Axis;
import pitchstack.model.PitchstackPackage.Literals;

/**
 * Ends the travel of an axis at a position, in place of the stop that stood on that side.
 *
 * @param axis the axis
 * @param scale its scale
 * @param high whether it is the stop at the high end
 * @param position where it stands, a count of the scale
 */
public record PlaceStop(Axis axis, Scale scale, boolean high, long position) implements Edit {
    @Override
    public String label() {
        return "Place " + (high ? "high" : "low") + " stop at " + TrueMinus.in(scale.format(position));
    }

    @Override
    public void apply() {
        EAttribute stop = high ? Literals.AXIS__HIGH : Literals.AXIS__LOW;
        axis.eSet(stop, TypedText.of(scale, position));
    }
}
