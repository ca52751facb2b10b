// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.List;
import org.eclipse.gef.editpolicies.SelectionHandlesEditPolicy;

/** Shows a handle at either end of a selected row. */
final class RowEnds extends SelectionHandlesEditPolicy {
    /** The role of this policy. */
    static final String ROLE = "row ends";

    private final SideView view;

    RowEnds(SideView view) {
        this.view = view;
    }

    @Override
    protected List<RowEndHandle> createSelectionHandles() {
        RowEditPart row = (RowEditPart) getHost();
        return List.of(new RowEndHandle(row, view, true), new RowEndHandle(row, view, false));
    }
}
