// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;

/** What the system said, in few words. */
final class Reasons {
    private Reasons() {
    }

    /** The reason of a failure without the paths that the system puts before it. */
    static String of(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "permission denied";
        }
        String said = e instanceof FileSystemException f && f.getReason() != null ? f.getReason() : e.getMessage();
        return said == null ? e.getClass().getSimpleName() : said;
    }
}
