// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.preferences;

import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.SWT;
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
     * Asks the system for its light or its dark colours; to be called before the first window opens.
     *
     * @param display an open one, since the window system keeps the choice
     * @param theme what to use; {@link Theme#SYSTEM} leaves all as it is
     */
    public static void use(Display display, Theme theme) {
        if (display.isDisposed() || theme == Theme.SYSTEM) {
            return;
        }
        // The toolkit offers this on every system, but only in the part of it that differs between them.
        String systems = "org.eclipse.swt.internal." + SWT.getPlatform() + ".OS";
        try {
            Class.forName(systems, true, Display.class.getClassLoader()).getMethod("setTheme", boolean.class)
                    .invoke(null, theme == Theme.DARK);
        } catch (ReflectiveOperationException | LinkageError e) {
            ILog.of(WindowColours.class).warn("The colours stay those of the system: this toolkit cannot change them.", e);
        }
    }
}
