// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.recovery;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.framework.FrameworkUtil;
import org.osgi.service.prefs.BackingStoreException;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFile;
import pitchstack.model.file.StackFileException;

/**
 * Where unsaved work is kept: beside its file, or, where that folder takes nothing and for documents that are in no file,
 * with the settings of the window. A list in the settings says which copies there are, so that the next start finds them.
 * Every copy has its {@link Owner} in its name, so that two programs that have one file open keep a copy each, and neither
 * takes the other's for left over.
 */
public final class UnsavedCopies {
    private static final String UNSAVED = ".unsaved";
    private static final String NODE = "pitchstack.unsaved";

    private final IEclipsePreferences list = InstanceScope.INSTANCE.getNode(NODE);

    /** The copy of a file's unsaved work that a program keeps. */
    public static Path beside(Path file, Owner owner) {
        return file.resolveSibling(file.getFileName() + UNSAVED + owner.inName());
    }

    /** A place for the work of a document that is in no file, or whose folder takes nothing. */
    Path apart() throws IOException {
        Path folder = Platform.getStateLocation(FrameworkUtil.getBundle(UnsavedCopies.class)).toPath().resolve("unsaved");
        return Files.createDirectories(folder).resolve(UUID.randomUUID() + Owner.self().inName() + "." + StackFile.EXTENSION);
    }

    /**
     * Keeps work; the copy stands whole at every instant. May be called from any thread.
     *
     * @param file the file the work belongs to, if any
     */
    void keep(Positioner work, Path copy, Optional<Path> file) throws StackFileException {
        note(copy, file);
        StackFile.saveCopy(work, copy);
    }

    /** Forgets a copy that is no longer needed. */
    void drop(Path copy) {
        try {
            Files.deleteIfExists(copy);
        } catch (IOException e) {
            ILog.of(UnsavedCopies.class).warn(copy + " is no longer needed and could not be deleted.", e);
        }
        list.remove(copy.toString());
        flush();
    }

    /** What is left over of a file, by a program that ended before it was saved. */
    Optional<Leftover> of(Path file) {
        return Stream.concat(leftBeside(file).map(copy -> new Leftover(copy, Optional.of(file))),
                all().stream().filter(left -> left.file().equals(Optional.of(file)))).findFirst();
    }

    private static Stream<Path> leftBeside(Path file) {
        String begin = file.getFileName() + UNSAVED + ".";
        try (Stream<Path> folder = Files.list(file.toAbsolutePath().getParent())) {
            return folder.filter(path -> path.getFileName().toString().startsWith(begin))
                    .filter(path -> Owner.of(path).isPresent() && isLeft(path)).sorted().toList().stream();
        } catch (IOException e) {
            ILog.of(UnsavedCopies.class).warn("The folder of " + file + " cannot be looked through for unsaved work.", e);
            return Stream.empty();
        }
    }

    private static boolean isLeft(Path copy) {
        return Files.isRegularFile(copy) && Owner.of(copy).filter(Owner::runs).isEmpty();
    }

    /** All that this window's settings know to be left over. */
    List<Leftover> all() {
        try {
            return Stream.of(list.keys()).sorted().map(copy -> new Leftover(Path.of(copy), file(list.get(copy, ""))))
                    .filter(left -> isLeft(left.copy())).toList();
        } catch (BackingStoreException e) {
            ILog.of(UnsavedCopies.class).error("The list of unsaved work cannot be read.", e);
            return List.of();
        }
    }

    private static Optional<Path> file(String kept) {
        return kept.isEmpty() ? Optional.empty() : Optional.of(Path.of(kept));
    }

    private synchronized void note(Path copy, Optional<Path> file) {
        String name = file.map(Path::toString).orElse("");
        if (!name.equals(list.get(copy.toString(), null))) {
            list.put(copy.toString(), name);
            flush();
        }
    }

    private void flush() {
        try {
            list.flush();
        } catch (BackingStoreException e) {
            ILog.of(UnsavedCopies.class).error("The list of unsaved work cannot be kept.", e);
        }
    }
}
