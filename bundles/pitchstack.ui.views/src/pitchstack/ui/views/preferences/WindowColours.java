// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.preferences;

import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTError;
import org.eclipse.swt.widgets.Display;
import pitchstack.edit.start.ShopDefaults.Theme;

/**
 * Chooses light or dark colours for all windows, before they open and while they are open. The drawing and the strips mix
 * their own from the system's ground and text, so they follow.
 */
public final class WindowColours {
    private WindowColours() {
    }

    /**
     * Asks the system for its light or its dark colours before there is a window, so that none shows the others first. GTK
     * reads colours when a display is opened, but needs an open one to ask; so one is opened here for that alone, and this
     * has to be called before the program opens its own. Other systems are asked by {@link #opened}.
     *
     * @param theme what to use; {@link Theme#SYSTEM} leaves all as it is
     */
    public static void prepare(Theme theme) {
        if (theme == Theme.SYSTEM || !isGtk()) {
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

    /**
     * Asks where {@link #prepare} did not, and from now on lets all that is open follow when the system's colours change.
     *
     * @param display the program's own, with no window yet
     */
    public static void opened(Display display, Theme theme) {
        KeptColours.renewIn(display);
        if (theme != Theme.SYSTEM && !isGtk()) {
            ask(theme == Theme.DARK);
        }
    }

    /** Whether windows that are open can change. Windows colours each part of a window when it is made. */
    static boolean changeAtOnce() {
        return !"win32".equals(SWT.getPlatform());
    }

    /** Changes the colours of all windows that are open, where that can be done. */
    public static void change(Theme theme) {
        if (changeAtOnce()) {
            ask(theme == Theme.SYSTEM ? Display.isSystemDarkTheme() : theme == Theme.DARK);
        }
    }

    private static boolean isGtk() {
        return "gtk".equals(SWT.getPlatform());
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
