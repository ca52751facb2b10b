// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import pitchstack.core.units.Scale;
import pitchstack.model.ApproachRule;
import pitchstack.model.Axis;
import pitchstack.model.AxisKind;
import pitchstack.model.PitchstackPackage.Literals;

/** The facts of an axis. */
final class AxisProperties {
    private static final String AXIS = "Axis";
    private static final String TRAVEL = "Travel";
    private static final String TARGET = "Target";

    private AxisProperties() {
    }

    static List<Property> of(Session session, Axis axis) {
        Entries entries = new Entries(axis, "“" + axis.getName() + "”");
        Scale scale = session.analysis(axis).spec().scale();
        return List.of(
                entries.text(Literals.AXIS__NAME, "name", "What this direction of motion is called.", AXIS),
                entries.choice(Literals.AXIS__KIND, "kind", "Along a line or around a centre.", TRAVEL, AxisKind.VALUES),
                entries.quantity(Literals.AXIS__DATUM, "datum", "The position of the carriage when every index is 0.", TRAVEL,
                        true, scale::parse),
                entries.size(Literals.AXIS__DATUM_UNCERTAINTY, "datum uncertainty (1 σ)",
                        "How well that position is known, as a standard uncertainty; empty if it does not count.", TRAVEL,
                        scale, -1),
                entries.quantity(Literals.AXIS__LOW, "lowest position", "Where a stop ends the travel below; empty if none.",
                        TRAVEL, true, scale::parse),
                entries.quantity(Literals.AXIS__HIGH, "highest position", "Where a stop ends the travel above; empty if none.",
                        TRAVEL, true, scale::parse),
                entries.choice(Literals.AXIS__APPROACH, "approach", "In which direction every stage must end its move, so that "
                        + "its teeth always seat from the same side.", TRAVEL, ApproachRule.VALUES),
                entries.quantity(Literals.AXIS__TOLERANCE, "tolerance", "The largest error that counts as reached.", TARGET,
                        true, Properties.above(scale, "A tolerance", -1)),
                entries.quantity(Literals.AXIS__WANTED_STEP, "wanted step",
                        "The step that this axis is meant to reach everywhere; empty if none is asked.", TARGET, true,
                        Properties.above(scale, "A wanted step", 0)));
    }
}
