// SPDX-License-Identifier: EPL-2.0
package org.eclipse.ui.internal;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Cursor;
import org.eclipse.swt.widgets.Display;

/**
 * Cursors shown while the palette is dragged to a side, under the name that GEF 3.2 calls them by; the platform no
 * longer has a class of this name. System cursors stand in, so nothing needs to be disposed.
 */
public final class DragCursors {

    /** Nothing can be dropped here. */
    public static final int INVALID = 0;
    /** The dragged part would go to the left side. */
    public static final int LEFT = 1;
    /** The dragged part would go to the right side. */
    public static final int RIGHT = 2;
    /** The dragged part would go to the top. */
    public static final int TOP = 3;
    /** The dragged part would go to the bottom. */
    public static final int BOTTOM = 4;

    private DragCursors() {
    }

    /**
     * Gives the cursor for a drop place.
     *
     * @param code one of the constants of this class; any other value gives the plain moving cursor
     * @return a system cursor of the current display; the caller must not dispose it
     */
    public static Cursor getCursor(int code) {
        return Display.getCurrent().getSystemCursor(switch (code) {
            case INVALID -> SWT.CURSOR_NO;
            case LEFT -> SWT.CURSOR_SIZEW;
            case RIGHT -> SWT.CURSOR_SIZEE;
            case TOP -> SWT.CURSOR_SIZEN;
            case BOTTOM -> SWT.CURSOR_SIZES;
            default -> SWT.CURSOR_SIZEALL;
        });
    }
}
