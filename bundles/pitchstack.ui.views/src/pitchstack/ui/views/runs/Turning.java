// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;

/** Parts that stand beside each other where there is width for it, and else one below the other. */
final class Turning {
    /** Beside each other parts are still wide enough for their tables from so much more width than height on. */
    private static final double WIDE = 1.2;

    private Turning() {
    }

    /** Parts of such shares. */
    static SashForm parts(Composite parent) {
        SashForm parts = new SashForm(parent, SWT.VERTICAL);
        parts.addListener(SWT.Resize, e -> {
            Rectangle area = parts.getClientArea();
            int wanted = area.width > WIDE * area.height ? SWT.HORIZONTAL : SWT.VERTICAL;
            if (parts.getOrientation() != wanted) {
                parts.setOrientation(wanted);
            }
        });
        return parts;
    }
}
