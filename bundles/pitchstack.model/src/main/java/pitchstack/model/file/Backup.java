// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * Keeps what a file holds under a second name, while the file itself stays untouched.
 *
 * @param file what to keep
 * @param spare an unused name in the same folder
 */
record Backup(Path file, Path spare) {
    /** Replaces the backup in one step, so that there is always a whole one if there ever was one. */
    void put(Path backup) throws IOException {
        if (Files.isDirectory(backup)) {
            throw new FileSystemException(backup.toString(), null, "a folder has this name");
        }
        try {
            secondName();
            SafeWrite.renameOver(spare, backup);
        } finally {
            // Renaming a link over another link to the same file does nothing at all (POSIX), so the spare may be left.
            Files.deleteIfExists(spare);
        }
    }

    private void secondName() throws IOException {
        try {
            Files.createLink(spare, file);
        } catch (UnsupportedOperationException | FileSystemException noLinks) {
            // Some disks have no hard links, and some systems forbid them on the files of others.
            Files.copy(file, spare, StandardCopyOption.COPY_ATTRIBUTES);
        }
    }
}
