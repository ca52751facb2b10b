// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.EObject;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;
import pitchstack.model.Axis;
import pitchstack.model.MeasurementRun;
import pitchstack.model.PitchstackPackage.Literals;
import pitchstack.model.Positioner;
import pitchstack.model.PrintSetup;
import pitchstack.model.Reading;
import pitchstack.model.Row;
import pitchstack.model.ShiftLimit;
import pitchstack.model.Stage;
import pitchstack.model.Target;
import pitchstack.model.ToothForm;
import pitchstack.model.WornRange;

/** The facts of each kind of element, as people see and type them. */
public final class Properties {
    /** Above this a row is no row of one device but a slip of the keyboard. */
    static final int MOST_TEETH = 100_000;
    private static final String TARGET = "Target";
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
            return RowProperties.of(row);
        }
        if (element instanceof WornRange range) {
            return WornRangeProperties.of(range);
        }
        if (element instanceof Axis axis) {
            return AxisProperties.of(session, axis);
        }
        if (element instanceof Target target) {
            return target(session, target);
        }
        if (element instanceof ShiftLimit limit) {
            return shiftLimit(session, limit);
        }
        if (element instanceof MeasurementRun run) {
            return RunProperties.of(session, run);
        }
        if (element instanceof Reading reading) {
            return ReadingProperties.of(session, reading);
        }
        if (element instanceof ToothForm form) {
            return ToothFormProperties.of((Stage) form.eContainer());
        }
        if (element instanceof PrintSetup setup) {
            return PrintSetupProperties.of(setup);
        }
        return element instanceof Positioner positioner ? PositionerProperties.of(positioner) : List.of();
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
