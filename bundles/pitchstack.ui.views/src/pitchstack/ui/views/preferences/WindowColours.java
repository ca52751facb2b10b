// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.preferences;

import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTError;
import org.eclipse.swt.widgets.Display;
import pitchstack.edit.start.ShopDefaults.Theme;

/**
 * Chooses light or dark colours for all windows. The drawing and the strips mix their own from the system's ground and
 * text, so they follow.
 */
public final class WindowColours {
    private WindowColours() {
    }

    /**
     * Asks the system for its light or its dark colours. The toolkit reads colours once, when a display is opened, but
     * needs an open one to ask; so one is opened here for that alone, and this has to be called before the program opens
     * its own.
     *
     * @param theme what to use; {@link Theme#SYSTEM} leaves all as it is
     */
    public static void prepare(Theme theme) {
        if (theme == Theme.SYSTEM) {
            return;
        }
        Display first;
        try {
            first = new Display();
        } catch (SWTError noDisplay) {
            // The program finds out itself, and says so.
            return;
        }
        try {
            ask(theme == Theme.DARK);
        } finally {
            first.dispose();
        }
    }

    private static void ask(boolean dark) {
        // The toolkit offers this on every system, but only in the part of it that differs between them.
        String systems = "org.eclipse.swt.internal." + SWT.getPlatform() + ".OS";
        try {
            Class.forName(systems, true, Display.class.getClassLoader()).getMethod("setTheme", boolean.class)
                    .invoke(null, dark);
        } catch (ReflectiveOperationException | LinkageError e) {
            ILog.of(WindowColours.class).warn("The colours stay those of the system: this toolkit cannot change them.", e);
        }
    }
}
