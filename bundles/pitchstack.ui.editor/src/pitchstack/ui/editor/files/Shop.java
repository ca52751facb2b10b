// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.files;

import java.util.Locale;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import pitchstack.edit.start.ShopDefaults;

/** What the person has chosen for all files. */
public final class Shop {
    private Shop() {
    }

    /** The choices as they are now. */
    public static ShopDefaults get() {
        IEclipsePreferences kept = InstanceScope.INSTANCE.getNode(ShopDefaults.NODE);
        return ShopDefaults.read(key -> kept.get(key, null), Locale.getDefault());
    }
}
