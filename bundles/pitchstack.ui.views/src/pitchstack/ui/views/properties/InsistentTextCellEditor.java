// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.properties;

import org.eclipse.jface.viewers.TextCellEditor;
import org.eclipse.swt.events.SelectionEvent;
import org.eclipse.swt.widgets.Composite;

/** A text cell that stays open, with the sentence showing, when Enter is pressed on a text that cannot be taken. */
final class InsistentTextCellEditor extends TextCellEditor {
    InsistentTextCellEditor(Composite parent) {
        super(parent);
    }

    @Override
    protected void handleDefaultSelection(SelectionEvent event) {
        if (isValueValid()) {
            super.handleDefaultSelection(event);
        } else {
            text.getDisplay().beep();
        }
    }
}
