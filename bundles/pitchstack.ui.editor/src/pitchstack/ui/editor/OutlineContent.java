// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.ITreeContentProvider;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;
import pitchstack.model.Row;
import pitchstack.model.Stage;

/** Positioner, axes, stages with the carriage's on top as they are drawn, rows, worn ranges; then the targets. */
final class OutlineContent implements ITreeContentProvider {
    @Override
    public Object[] getElements(Object input) {
        return new Object[] {((Session) input).positioner()};
    }

    @Override
    public Object[] getChildren(Object parent) {
        return children(parent).toArray();
    }

    private static List<? extends EObject> children(Object parent) {
        if (parent instanceof Positioner positioner) {
            return positioner.getAxes();
        }
        if (parent instanceof Axis axis) {
            List<EObject> children = new ArrayList<>(axis.getStages());
            Collections.reverse(children);
            children.addAll(axis.getTargets());
            return children;
        }
        if (parent instanceof Stage stage) {
            return Stream.of(stage.getRiderRow(), stage.getBaseRow()).filter(Objects::nonNull).toList();
        }
        return parent instanceof Row row ? row.getWorn() : List.of();
    }

    @Override
    public Object getParent(Object element) {
        return ((EObject) element).eContainer();
    }

    @Override
    public boolean hasChildren(Object element) {
        return !children(element).isEmpty();
    }
}
