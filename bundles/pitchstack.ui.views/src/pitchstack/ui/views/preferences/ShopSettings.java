// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.preferences;

import java.util.Locale;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;
import pitchstack.edit.start.ShopDefaults;

/** Where the choices of a person are kept: with the settings of the window, not in files. */
public final class ShopSettings {
    private ShopSettings() {
    }

    /** The choices as they are now. */
    public static ShopDefaults get() {
        return ShopDefaults.read(key -> node().get(key, null), Locale.getDefault());
    }

    /** Keeps choices. */
    static void put(ShopDefaults chosen) {
        IEclipsePreferences node = node();
        chosen.texts().forEach((key, text) -> node.put(key.word(), text));
        try {
            node.flush();
        } catch (BackingStoreException e) {
            ILog.of(ShopSettings.class).error("The choices could not be kept; they hold until the program ends.", e);
        }
    }

    private static IEclipsePreferences node() {
        return InstanceScope.INSTANCE.getNode(ShopDefaults.NODE);
    }
}
