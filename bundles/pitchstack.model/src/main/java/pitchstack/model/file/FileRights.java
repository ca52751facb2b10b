// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Who may do what with a file, where the system knows owner, group and others.
 *
 * @param old what the old file has; empty where there is none or the system does not know such rights
 */
record FileRights(Optional<PosixFileAttributes> old) {
    /** The rights of a file, which need not exist. */
    static FileRights of(Path file) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        return new FileRights(view == null || !Files.exists(file)
                ? Optional.empty() : Optional.of(view.readAttributes()));
    }

    /** Whether the system knows such rights at a place. */
    static boolean arePosix(Path path) {
        return Files.getFileAttributeView(path, PosixFileAttributeView.class) != null;
    }

    /** What to create a new file with, so that nobody reads it who could not read the old one. */
    List<FileAttribute<?>> atCreation() {
        return old.<List<FileAttribute<?>>>map(o -> List.of(PosixFilePermissions.asFileAttribute(privately(o))))
                .orElse(List.of());
    }

    /** Gives a new file the rights of the old one, as far as the person may. */
    void giveTo(Path fresh) throws IOException {
        if (old.isEmpty()) {
            return;
        }
        PosixFileAttributes wanted = old.get();
        PosixFileAttributeView view = Files.getFileAttributeView(fresh, PosixFileAttributeView.class);
        Set<PosixFilePermission> permissions = EnumSet.noneOf(PosixFilePermission.class);
        permissions.addAll(wanted.permissions());
        try {
            if (!view.readAttributes().group().equals(wanted.group())) {
                view.setGroup(wanted.group());
            }
            if (!view.readAttributes().owner().equals(wanted.owner())) {
                view.setOwner(wanted.owner());
            }
        } catch (FileSystemException notOurs) {
            // Only the administrator may give files away. The file is the saver's now, in a group of the saver's, which
            // may do no more than everybody.
            if (!view.readAttributes().group().equals(wanted.group())) {
                asOthers(permissions);
            }
        }
        view.setPermissions(permissions);
    }

    private static void asOthers(Set<PosixFilePermission> permissions) {
        Map.of(PosixFilePermission.GROUP_READ, PosixFilePermission.OTHERS_READ,
                PosixFilePermission.GROUP_WRITE, PosixFilePermission.OTHERS_WRITE,
                PosixFilePermission.GROUP_EXECUTE, PosixFilePermission.OTHERS_EXECUTE).forEach((group, others) -> {
                    permissions.remove(group);
                    if (permissions.contains(others)) {
                        permissions.add(group);
                    }
                });
    }

    private static Set<PosixFilePermission> privately(PosixFileAttributes old) {
        Set<PosixFilePermission> some = EnumSet.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);
        some.retainAll(old.permissions());
        return some;
    }
}
