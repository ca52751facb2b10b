// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import pitchstack.model.Axis;
import pitchstack.model.Row;
import pitchstack.model.Stage;

/** Finds one's way among the elements of a document. */
public final class Elements {
    private Elements() {
    }

    /** The first element of a selection, if it is one of a document. */
    public static Optional<EObject> selected(ISelection selection) {
        return selection instanceof IStructuredSelection list && list.getFirstElement() instanceof EObject element
                ? Optional.of(element) : Optional.empty();
    }

    /** The stage that an element is, or is a part of. */
    public static Optional<Stage> stage(EObject element) {
        return around(element, Stage.class);
    }

    /** The row that an element is, or is a part of. */
    public static Optional<Row> row(EObject element) {
        return around(element, Row.class);
    }

    /** The axis that an element is, or is a part of. */
    public static Optional<Axis> axis(EObject element) {
        return around(element, Axis.class);
    }

    private static <T> Optional<T> around(EObject element, Class<T> kind) {
        for (EObject at = element; at != null; at = at.eContainer()) {
            if (kind.isInstance(at)) {
                return Optional.of(kind.cast(at));
            }
        }
        return Optional.empty();
    }

    /** The place of a stage on its axis, 0 being the lowest. */
    public static int number(Stage stage) {
        return ((Axis) stage.eContainer()).getStages().indexOf(stage);
    }
}
