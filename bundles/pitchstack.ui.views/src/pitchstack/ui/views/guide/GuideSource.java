// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.guide;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.osgi.framework.Bundle;

/** Finds pages and pictures in the help bundle, by paths from its root. */
final class GuideSource {
    /** The page that all others are reached from. */
    static final String INDEX = "docs/user-guide.md";
    private static final String BUNDLE = "pitchstack.help";

    /** The path that a link on a page leads to, without its anchor. */
    static String resolve(String page, String link) {
        return URI.create("/" + page).resolve(link.replaceFirst("#.*", "").replace(" ", "%20")).getPath().substring(1);
    }

    /** The text of a page; empty where there is none. */
    Optional<String> page(String path) {
        return open(path, in -> new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }

    /** What is read from a file of the bundle; empty where there is none or it cannot be read, which is then in the log. */
    <T> Optional<T> open(String path, Reading<T> reading) {
        Bundle bundle = Platform.getBundle(BUNDLE);
        URL file = bundle == null ? null : bundle.getEntry(path);
        if (file == null) {
            return Optional.empty();
        }
        try (InputStream in = file.openStream()) {
            return Optional.of(reading.read(in));
        } catch (IOException e) {
            ILog.of(GuideSource.class).error(path + " of the user guide cannot be read.", e);
            return Optional.empty();
        }
    }

    /** Makes something of a file. */
    @FunctionalInterface
    interface Reading<T> {
        /** Reads it. */
        T read(InputStream in) throws IOException;
    }
}
