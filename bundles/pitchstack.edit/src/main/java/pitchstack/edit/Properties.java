// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.EObject;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;
import pitchstack.model.ApproachRule;
import pitchstack.model.Axis;
import pitchstack.model.AxisKind;
import pitchstack.model.DisplayUnit;
import pitchstack.model.PitchstackPackage.Literals;
import pitchstack.model.Positioner;
import pitchstack.model.Row;
import pitchstack.model.ShiftLimit;
import pitchstack.model.Stage;
import pitchstack.model.Target;
import pitchstack.model.WornRange;

/** The facts of each kind of element, as people see and type them. */
public final class Properties {
    /** Above this a row is no row of one device but a slip of the keyboard. */
    static final int MOST_TEETH = 100_000;
    private static final String SHOP = "Shop";
    private static final String TRAVEL = "Travel";
    private static final String TEETH = "Teeth";
    private static final String TARGET = "Target";
    private static final String TITLE = "Title";
    private static final String SHIFT = "Shift limit";

    private Properties() {
    }

    /**
     * The properties of an element, in the order in which to show them; none for an element that has none.
     *
     * @param session the document's session
     * @param element an element of its document
     */
    public static List<Property> of(Session session, EObject element) {
        if (element instanceof Stage stage) {
            return StageProperties.of(session, stage);
        }
        if (element instanceof Row row) {
            return row(row);
        }
        if (element instanceof WornRange range) {
            return WornRangeProperties.of(range);
        }
        if (element instanceof Axis axis) {
            return axis(session, axis);
        }
        if (element instanceof Target target) {
            return target(session, target);
        }
        if (element instanceof ShiftLimit limit) {
            return shiftLimit(session, limit);
        }
        return element instanceof Positioner positioner ? positioner(positioner) : List.of();
    }

    private static List<Property> positioner(Positioner positioner) {
        Entries entries = new Entries(positioner, "the positioner");
        return List.of(
                entries.text(Literals.POSITIONER__TITLE, "title", "What this device is called on drawings and cards.", TITLE),
                entries.choice(Literals.POSITIONER__UNIT, "unit",
                        "The unit in which lengths are shown, and meant where none is typed.", SHOP, DisplayUnit.VALUES),
                entries.decimal(Literals.POSITIONER__TEMPERATURE_C, "temperature (°C)",
                        "Today's temperature of the device; lengths are drawn for 20 °C.", SHOP, -40, 120),
                entries.quantity(Literals.POSITIONER__LINE_WIDTH, "printed line width",
                        "The width of one line of the printer, to tell which teeth are too small to print.", SHOP, false,
                        above(new LinearScale(LengthUnit.MM), "A printed line width", 0)));
    }

    private static List<Property> axis(Session session, Axis axis) {
        Entries entries = new Entries(axis, "“" + axis.getName() + "”");
        Scale scale = session.analysis(axis).spec().scale();
        return List.of(
                entries.text(Literals.AXIS__NAME, "name", "What this direction of motion is called.", TITLE),
                entries.choice(Literals.AXIS__KIND, "kind", "Along a line or around a centre.", TRAVEL, AxisKind.VALUES),
                entries.quantity(Literals.AXIS__DATUM, "datum", "The position of the carriage when every index is 0.", TRAVEL,
                        true, scale::parse),
                entries.quantity(Literals.AXIS__LOW, "lowest position", "Where a stop ends the travel below; empty if none.",
                        TRAVEL, true, scale::parse),
                entries.quantity(Literals.AXIS__HIGH, "highest position", "Where a stop ends the travel above; empty if none.",
                        TRAVEL, true, scale::parse),
                entries.choice(Literals.AXIS__APPROACH, "approach", "In which direction every stage must end its move, so that "
                        + "its teeth always seat from the same side.", TRAVEL, ApproachRule.VALUES),
                entries.quantity(Literals.AXIS__TOLERANCE, "tolerance", "The largest error that counts as reached.", TARGET,
                        true, above(scale, "A tolerance", -1)),
                entries.quantity(Literals.AXIS__WANTED_STEP, "wanted step",
                        "The step that this axis is meant to reach everywhere; empty if none is asked.", TARGET, true,
                        above(scale, "A wanted step", 0)));
    }

    private static List<Property> row(Row row) {
        boolean base = row.eContainmentFeature() == Literals.STAGE__BASE_ROW;
        Entries entries = new Entries(row, (base ? "the base row of “" : "the rider row of “")
                + ((Stage) row.eContainer()).getName() + "”");
        return List.of(
                entries.integer(Literals.ROW__TEETH, "teeth", "How many teeth the row has.", TEETH, 1, MOST_TEETH),
                entries.text(Literals.ROW__PRINT_SETUP, "print set-up",
                        "Rows printed together, in one direction, share their errors; give them the same word here.", TEETH));
    }

    private static List<Property> target(Session session, Target target) {
        Entries entries = new Entries(target, "“" + target.getName() + "”");
        Scale scale = session.analysis((Axis) target.eContainer()).spec().scale();
        return List.of(
                entries.text(Literals.TARGET__NAME, "name", "What this target is called.", TARGET),
                entries.quantity(Literals.TARGET__POSITION, "position", "Where the carriage shall stand.", TARGET, false,
                        scale::parse),
                entries.quantity(Literals.TARGET__TOLERANCE, "tolerance",
                        "The largest error that counts as reached; empty for the tolerance of the axis.", TARGET, true,
                        above(scale, "A tolerance", -1)),
                entries.text(Literals.TARGET__NOTE, "note", "Anything worth knowing.", TARGET));
    }

    private static List<Property> shiftLimit(Session session, ShiftLimit limit) {
        Axis axis = (Axis) limit.eContainer();
        Entries entries = new Entries(limit, "a shift limit");
        return List.of(
                entries.integer(Literals.SHIFT_LIMIT__LOWEST, "lowest stage", "The lowest stage that counts; stages count "
                        + "from 1 at the bottom.", SHIFT, 1, Math.max(1, limit.getHighest())),
                entries.integer(Literals.SHIFT_LIMIT__HIGHEST, "highest stage", "The highest stage that counts, that one "
                        + "included.", SHIFT, Math.max(1, limit.getLowest()), Math.max(1, axis.getStages().size())),
                entries.quantity(Literals.SHIFT_LIMIT__LIMIT, "limit", "How far the body on the highest stage may stand off "
                        + "the one under the lowest, to either side, at every step of a move.", SHIFT, false,
                        above(session.analysis(axis).spec().scale(), "A shift limit", -1)));
    }

    /** Reads a quantity that must lie above a bound, given in counts: 0, or −1 for “not negative”. */
    static Consumer<String> above(Scale scale, String what, long bound) {
        return typed -> {
            if (scale.parse(typed) <= bound) {
                throw new QuantityException(what + " of " + typed.strip() + " is not allowed; it must "
                        + (bound < 0 ? "not be negative." : "be above 0."));
            }
        };
    }
}
