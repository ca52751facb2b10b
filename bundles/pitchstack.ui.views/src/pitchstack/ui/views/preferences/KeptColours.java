// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.preferences;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Tree;

/**
 * Controls that keep the colours the system had when they were made: the folders of tabs around editor and views, and
 * trees with words in two colours. They are given those of now when the system's colours have changed.
 */
final class KeptColours {
    private KeptColours() {
    }

    /** Sees to it as long as a display is open. */
    static void renewIn(Display display) {
        // After all other listeners, since folders also colour what lies in them.
        display.addListener(SWT.Settings, event -> display.asyncExec(() -> {
            for (Control shell : display.getShells()) {
                renew(shell);
            }
        }));
    }

    private static void renew(Control control) {
        if (control.isDisposed()) {
            return;
        }
        if (control instanceof CTabFolder folder) {
            folder.setBackground((Color) null);
            folder.setForeground(null);
            folder.setSelectionBackground((Color) null);
            folder.setSelectionForeground(null);
        } else if (control instanceof Tree) {
            control.setForeground(null);
        }
        if (control instanceof Composite composite) {
            for (Control child : composite.getChildren()) {
                renew(child);
            }
        }
    }
}
