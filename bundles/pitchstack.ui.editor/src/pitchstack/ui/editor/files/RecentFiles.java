// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.files;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/** The files used last, newest first, kept with the user's settings. */
public final class RecentFiles {
    /** How many are kept. */
    public static final int MOST = 10;
    private static final String NODE = "pitchstack.ui.editor";
    private static final String KEY = "recentFiles";
    private static final String SEPARATOR = "\n";

    private final IEclipsePreferences settings = InstanceScope.INSTANCE.getNode(NODE);

    /** The files, newest first. They need not exist any more. */
    public List<Path> list() {
        return Stream.of(settings.get(KEY, "").split(SEPARATOR)).filter(line -> !line.isEmpty()).map(Path::of).toList();
    }

    /** Puts a file first. */
    public void add(Path file) {
        keep(Stream.concat(Stream.of(file), list().stream().filter(other -> !other.equals(file))).limit(MOST).toList());
    }

    /** Forgets a file. */
    public void remove(Path file) {
        keep(list().stream().filter(other -> !other.equals(file)).toList());
    }

    private void keep(List<Path> files) {
        settings.put(KEY, String.join(SEPARATOR, files.stream().map(Path::toString).toList()));
        try {
            settings.flush();
        } catch (BackingStoreException e) {
            // The list is a convenience: it still serves until the program ends.
            Platform.getLog(RecentFiles.class).warn("The list of recent files could not be kept: " + e.getMessage(), e);
        }
    }
}
