// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import pitchstack.model.Axis;
import pitchstack.model.MeasurementRun;
import pitchstack.model.PrintSetup;
import pitchstack.model.ShiftLimit;
import pitchstack.model.Stage;
import pitchstack.model.Target;
import pitchstack.model.WornRange;

/**
 * Takes an element out of the document.
 *
 * @param element a stage, a target, a worn range, a shift limit, a measurement run or a print set-up
 */
public record RemoveElement(EObject element) implements Edit {
    /** Refuses what cannot be removed alone. */
    public RemoveElement {
        if (!canRemove(element)) {
            throw new IllegalArgumentException("Not removable: " + element);
        }
    }

    /**
     * Whether an element can be removed: a stage, a target, a worn range, a shift limit, a measurement run or a print
     * set-up that is part of a document.
     */
    public static boolean canRemove(EObject element) {
        return (element instanceof Stage || element instanceof Target || element instanceof WornRange
                || element instanceof ShiftLimit || element instanceof MeasurementRun || element instanceof PrintSetup)
                && element.eContainer() != null;
    }

    @Override
    public String label() {
        if (element instanceof Stage stage) {
            return "Delete stage “" + stage.getName() + "”";
        }
        if (element instanceof Target target) {
            return "Delete target “" + target.getName() + "”";
        }
        if (element instanceof MeasurementRun run) {
            return "Delete the run of " + RunWords.title(run);
        }
        if (element instanceof PrintSetup setup) {
            return "Delete print set-up “" + setup.getName() + "”";
        }
        return element instanceof WornRange ? "Delete worn range" : "Delete shift limit";
    }

    @Override
    public void apply() {
        if (element instanceof Stage stage) {
            Axis axis = (Axis) stage.eContainer();
            LimitNumbers.close(axis, axis.getStages().indexOf(stage));
            MeasuredSettings.close(axis, axis.getStages().indexOf(stage));
        }
        if (element instanceof MeasurementRun run) {
            forget(run);
        }
        EcoreUtil.remove(element);
    }

    /** A fitted number stays, but not the word of a run that is gone. */
    private static void forget(MeasurementRun run) {
        ((Axis) run.eContainer()).getStages().stream().filter(stage -> stage.getCorrectionRun() == run)
                .forEach(stage -> stage.setCorrectionRun(null));
    }
}
