// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;

/** Lets a control follow the colours of the system, which change while the program runs. */
public final class Colours {
    private Colours() {
    }

    /**
     * Colours a control now, and again whenever the system's colours change.
     *
     * @param control which is painted anew afterwards, and until whose end it is done
     * @param colouring takes what it needs from the display
     */
    public static void follow(Control control, Runnable colouring) {
        Display display = control.getDisplay();
        Listener again = event -> {
            colouring.run();
            control.redraw();
        };
        display.addListener(SWT.Settings, again);
        control.addListener(SWT.Dispose, event -> display.removeListener(SWT.Settings, again));
        colouring.run();
    }
}
