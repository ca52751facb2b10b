// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import pitchstack.core.units.Scale;
import pitchstack.model.Axis;
import pitchstack.model.MeasurementRun;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.PrintSetup;
import pitchstack.model.Row;
import pitchstack.model.ShiftLimit;
import pitchstack.model.Stage;
import pitchstack.model.Target;
import pitchstack.model.WornRange;

/**
 * Adds an element to a list of the document.
 *
 * @param <T> the kind of element
 * @param list the list it joins
 * @param position where in the list, from 0 to the list's size
 * @param element the new element
 * @param label what the person did
 */
public record AddElement<T extends EObject>(EList<T> list, int position, T element, String label) implements Edit {
    /** Puts a stage on an axis, the lowest at position 0. */
    public static Edit stage(Axis axis, int position, Stage stage) {
        return new AddStage(axis, position, stage);
    }

    /** Adds a target to the end of an axis's list. */
    public static Edit target(Axis axis, Target target) {
        return new AddElement<>(axis.getTargets(), axis.getTargets().size(), target,
                "Add target “" + target.getName() + "”");
    }

    /**
     * A target that is about to be added.
     *
     * @param target the target, in no document yet
     * @param edit adds it to the end of its axis's list
     */
    public record NewTarget(Target target, Edit edit) { }

    /** A target at a position, a count of the scale, with a name of its own. */
    public static NewTarget newTarget(Axis axis, Scale scale, long position) {
        Target target = PitchstackFactory.eINSTANCE.createTarget();
        target.setName("Target " + (axis.getTargets().size() + 1));
        target.setPosition(TypedText.of(scale, position));
        return new NewTarget(target, target(axis, target));
    }

    /** Limits how far bodies of an axis may stand off each other. */
    public static Edit shiftLimit(Axis axis, ShiftLimit limit) {
        return new AddElement<>(axis.getShiftLimits(), axis.getShiftLimits().size(), limit, "Add shift limit");
    }

    /** Marks teeth of a row. */
    public static Edit wornRange(Row row, WornRange range) {
        return new AddElement<>(row.getWorn(), row.getWorn().size(), range,
                "Mark teeth " + range.getFirst() + " to " + range.getLast() + " as " + range.getKind().getLiteral());
    }

    /** Adds a run to the end of an axis's list. */
    public static Edit run(Axis axis, MeasurementRun run) {
        return new AddElement<>(axis.getRuns(), axis.getRuns().size(), run, "Add the run of " + RunWords.title(run));
    }

    /** Adds a print set-up. */
    public static Edit printSetup(Positioner positioner, PrintSetup setup) {
        return new AddElement<>(positioner.getPrintSetups(), positioner.getPrintSetups().size(), setup,
                "Add print set-up “" + setup.getName() + "”");
    }

    @Override
    public void apply() {
        list.add(position, element);
    }
}
