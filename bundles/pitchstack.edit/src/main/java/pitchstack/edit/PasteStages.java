// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.ecore.util.EcoreUtil;
import pitchstack.model.Axis;
import pitchstack.model.Stage;

/**
 * Puts stages on an axis that were copied from this file or from another. A name that is taken gets a number; a
 * measurement run that the axis does not have is no longer referred to, while the fitted number stays.
 *
 * @param axis the axis
 * @param position where they go, the lowest at 0
 * @param stages the stages, lowest first, in no document
 * @param label what the person did
 */
public record PasteStages(Axis axis, int position, List<Stage> stages, String label) implements Edit {
    /** Copies the list. */
    public PasteStages {
        stages = List.copyOf(stages);
    }

    /** Copies of stages that can be pasted on an axis; the originals stay as they are. */
    public static PasteStages of(Axis axis, int position, List<Stage> originals) {
        List<Stage> copies = prepare(axis, originals);
        return new PasteStages(axis, position, copies, copies.size() == 1 ? "Paste stage “" + copies.get(0).getName() + "”"
                : "Paste " + copies.size() + " stages");
    }

    /** Puts a copy of a stage on the stage itself. */
    public static PasteStages duplicate(Stage stage) {
        Axis axis = (Axis) stage.eContainer();
        return new PasteStages(axis, axis.getStages().indexOf(stage) + 1, prepare(axis, List.of(stage)),
                "Duplicate stage “" + stage.getName() + "”");
    }

    private static List<Stage> prepare(Axis axis, List<Stage> originals) {
        List<Stage> copies = new ArrayList<>();
        for (Stage original : originals) {
            Stage copy = EcoreUtil.copy(original);
            if (copy.getName() != null) {
                copy.setName(FreeName.of(axis, copies, copy.getName()));
            }
            if (!axis.getRuns().contains(copy.getCorrectionRun())) {
                copy.setCorrectionRun(null);
            }
            copies.add(copy);
        }
        return copies;
    }

    @Override
    public void apply() {
        for (int i = 0; i < stages.size(); i++) {
            new AddStage(axis, position + i, stages.get(i)).apply();
        }
    }
}
