// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.export;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/** Choices kept with the settings of the window. */
public final class KeptChoices {
    private final IEclipsePreferences node;

    /** @param name of the place where they are kept */
    public KeptChoices(String name) {
        node = InstanceScope.INSTANCE.getNode(name);
    }

    /** One that is a word of an enumeration; one that is not known any more counts as not made. */
    public <T extends Enum<T>> Optional<T> one(T[] values, String key) {
        return Arrays.stream(values).filter(value -> value.name().equals(text(key))).findFirst();
    }

    /** One as it was kept, or nothing. */
    public String text(String key) {
        return node.get(key, "");
    }

    /** Keeps them for the next time. */
    public void keep(Map<String, String> choices) {
        choices.forEach(node::put);
        try {
            node.flush();
        } catch (BackingStoreException e) {
            ILog.of(KeptChoices.class).error("The choices could not be kept; they hold until the program ends.", e);
        }
    }
}
