// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import org.eclipse.emf.ecore.EAttribute;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;
import pitchstack.model.Axis;
import pitchstack.model.PitchstackPackage.Literals;

/**
 * Counts positions from another place. The device stays as it is: the stops keep their places and so get other numbers,
 * while targets keep their numbers, since those say how far from the datum the carriage is wanted.
 *
 * @param axis the axis
 * @param spec the axis in numbers
 * @param zero the position that becomes 0, a count of the scale
 */
public record MoveDatum(Axis axis, AxisSpec spec, long zero) implements Edit {
    @Override
    public String label() {
        return "Count positions from " + TrueMinus.in(spec.scale().format(zero));
    }

    @Override
    public void apply() {
        Scale scale = spec.scale();
        set(Literals.AXIS__DATUM, scale, spec.datum());
        spec.low().ifPresent(low -> set(Literals.AXIS__LOW, scale, low));
        spec.high().ifPresent(high -> set(Literals.AXIS__HIGH, scale, high));
    }

    private void set(EAttribute feature, Scale scale, long count) {
        axis.eSet(feature, TypedText.of(scale, scale.wrap(count - zero)));
    }
}
