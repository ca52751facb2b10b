// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import org.eclipse.jface.viewers.ColumnViewerEditor;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationEvent;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationStrategy;
import org.eclipse.jface.viewers.FocusCellHighlighter;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerEditor;
import org.eclipse.jface.viewers.TableViewerFocusCellManager;
import org.eclipse.jface.viewers.ViewerCell;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Table;

/** Lets the cells of a table be edited in place: by a double click, or with the arrow keys and F2 or Enter. */
public final class CellEditing {
    private CellEditing() {
    }

    /** Begins for a table whose columns have editing support. */
    public static void in(TableViewer viewer) {
        TableViewerFocusCellManager focus = new TableViewerFocusCellManager(viewer, new CellFrame(viewer));
        ColumnViewerEditorActivationStrategy strategy = new ColumnViewerEditorActivationStrategy(viewer) {
            @Override
            protected boolean isEditorActivationEvent(ColumnViewerEditorActivationEvent event) {
                boolean key = event.eventType == ColumnViewerEditorActivationEvent.KEY_PRESSED
                        && (event.keyCode == SWT.F2 || event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR);
                return key || event.eventType == ColumnViewerEditorActivationEvent.TRAVERSAL
                        || event.eventType == ColumnViewerEditorActivationEvent.MOUSE_DOUBLE_CLICK_SELECTION
                        || event.eventType == ColumnViewerEditorActivationEvent.PROGRAMMATIC;
            }
        };
        strategy.setEnableEditorActivationWithKeyboard(true);
        TableViewerEditor.create(viewer, focus, strategy, ColumnViewerEditor.TABBING_HORIZONTAL
                | ColumnViewerEditor.TABBING_MOVE_TO_ROW_NEIGHBOR | ColumnViewerEditor.KEYBOARD_ACTIVATION);
    }

    /** A frame around the cell that the keys act on; it leaves text and pictures as they are. */
    private static final class CellFrame extends FocusCellHighlighter {
        private final Table table;

        CellFrame(TableViewer viewer) {
            super(viewer);
            table = viewer.getTable();
            table.addListener(SWT.PaintItem, e -> {
                ViewerCell cell = getFocusCell();
                if (cell != null && cell.getItem() == e.item && cell.getColumnIndex() == e.index && table.isFocusControl()) {
                    Rectangle bounds = cell.getBounds();
                    e.gc.setForeground(table.getDisplay().getSystemColor(SWT.COLOR_LIST_SELECTION_TEXT));
                    e.gc.drawRectangle(bounds.x, bounds.y, bounds.width - 1, bounds.height - 1);
                }
            });
        }

        @Override
        protected void focusCellChanged(ViewerCell newCell, ViewerCell oldCell) {
            table.redraw();
        }
    }
}
