// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import pitchstack.analysis.Quantities;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.Scale;
import pitchstack.model.Positioner;

/** What is said about an axis and its unit. */
final class Sayings {
    private Sayings() {
    }

    /** The unit that is meant where none is typed. */
    static String unit(Positioner positioner, Scale scale) {
        return scale.turn() > 0 ? "°" : Quantities.unit(positioner).symbol();
    }

    /** What an axis is called at the beginning of a sentence. */
    static String axis(AxisSpec axis) {
        return axis.name().isBlank() ? "This axis" : "Axis “" + axis.name() + "”";
    }

    /** Where an axis stands in a setting: {@code Axis “Fence” stands at 12.000 in}. */
    static String standing(AxisSpec axis, Setting setting) {
        return axis(axis) + " stands at " + axis.scale().format(axis.position(setting));
    }

    /** What to do while nothing is asked. */
    static String invitation(Scale scale) {
        String example = scale.turn() > 0 ? "12.5 or 12°30'"
                : scale instanceof LinearScale linear && linear.unit() == LengthUnit.INCH ? "37.625 or 37 5/8" : "742.3";
        return "Type a target, such as " + example + ", or pick a saved one, and the moves that reach it are shown here.";
    }
}
