// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.util.Set;
import java.util.UUID;
import pitchstack.model.file.StackFileException.Problem;

/**
 * Replaces a file so that at every instant the old or the new content stands whole under its name: the new content is
 * written beside it and flushed to disk, the old file gets a second name as its backup, and the new one is renamed over
 * it in one step. Another hard link to the file keeps the old content.
 *
 * @param file the file, as the caller names it
 */
public record SafeWrite(Path file) {
    private static final int MOST_LINKS = 40;
    private static final Set<StandardOpenOption> NEW = Set.of(StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW);

    /**
     * Writes the bytes, or leaves the old file as it was and nothing beside it.
     *
     * @throws StackFileException if the folder or the disk does not take them
     */
    public void write(byte[] bytes) throws StackFileException {
        write(bytes, true);
    }

    /**
     * Writes the bytes without keeping a backup of what was there.
     *
     * @throws StackFileException if the folder or the disk does not take them; the old file then stands as it was
     */
    public void writeOver(byte[] bytes) throws StackFileException {
        write(bytes, false);
    }

    private void write(byte[] bytes, boolean backup) throws StackFileException {
        Path target = target().toAbsolutePath();
        Path folder = target.getParent();
        requireWritable(target, folder);
        Path fresh = beside(folder);
        try {
            try {
                fill(fresh, bytes, FileRights.of(target));
                if (backup) {
                    keepOld(target, beside(folder));
                }
                renameOver(fresh, target);
            } finally {
                Files.deleteIfExists(fresh);
            }
            flushFolder(folder);
        } catch (StackFileException e) {
            throw e;
        } catch (IOException e) {
            throw explain(e, folder, bytes.length);
        }
    }

    /** Renames in one step, over what bears the name already. */
    static void renameOver(Path from, Path to) throws IOException {
        // In one step the second option is implied on real disks; some other file systems want it said.
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** What the name stands for: the end of a chain of symbolic links, which need not exist yet. */
    private Path target() throws StackFileException {
        Path target = file;
        try {
            for (int i = 0; Files.isSymbolicLink(target); i++) {
                if (i == MOST_LINKS) {
                    throw unwritable("its symbolic links lead round in a circle; save under another name.", null);
                }
                target = target.resolveSibling(Files.readSymbolicLink(target));
            }
            return target;
        } catch (StackFileException e) {
            throw e;
        } catch (IOException e) {
            throw unwritable("its symbolic link cannot be followed (" + Reasons.of(e)
                    + "); save under another name.", e);
        }
    }

    private void requireWritable(Path target, Path folder) throws StackFileException {
        if (!Files.isDirectory(folder)) {
            throw unwritable("there is no folder " + folder + "; make it, or save to another folder.", null);
        }
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            throw unwritable("a folder or a device has this name; save under another name.", null);
        }
        if (Files.exists(target) && !Files.isWritable(target)) {
            throw unwritable("the file is write-protected; save under another name, or lift the protection.", null);
        }
        if (!Files.isWritable(folder)) {
            throw unwritable("the folder " + folder + " takes no new files; save to another folder.", null);
        }
    }

    /** A name that no other file has, hidden where a leading point hides, and short whatever the file's own name is. */
    private static Path beside(Path folder) {
        return folder.resolve(".pitchstack-" + UUID.randomUUID() + ".tmp");
    }

    private static void fill(Path fresh, byte[] bytes, FileRights rights) throws IOException {
        try (FileChannel channel = FileChannel.open(fresh, NEW, rights.atCreation().toArray(FileAttribute<?>[]::new))) {
            ByteBuffer rest = ByteBuffer.wrap(bytes);
            while (rest.hasRemaining()) {
                channel.write(rest);
            }
            rights.giveTo(fresh);
            channel.force(true);
        }
    }

    private void keepOld(Path target, Path spare) throws IOException {
        if (!Files.exists(target)) {
            return;
        }
        Path backup = target.resolveSibling(target.getFileName() + StackFile.BACKUP_SUFFIX);
        try {
            new Backup(target, spare).put(backup);
        } catch (IOException e) {
            throw unwritable("the backup copy " + backup.getFileName() + " cannot be written (" + Reasons.of(e)
                    + "), so nothing was saved; move it away, or save under another name.", e);
        }
    }

    /** Makes the new name outlast a power cut; only systems that let a folder be opened can be asked. */
    private static void flushFolder(Path folder) {
        if (!FileRights.arePosix(folder)) {
            return;
        }
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notOffered) {
            // Some network disks do not do this. The new content is saved and on the disk; at worst a power cut in the
            // next seconds brings back the old name, whole.
            return;
        }
    }

    private StackFileException explain(IOException e, Path folder, int needed) {
        try {
            FileStore disk = Files.getFileStore(folder);
            long free = disk.getUsableSpace();
            // Folders that only mirror the system have no room at all, and are not full.
            if (free < needed && disk.getTotalSpace() > 0) {
                return unwritable("the disk is full: " + needed + " bytes are needed and " + free + " are free;"
                        + " make room, or save to another disk.", e);
            }
        } catch (IOException unknown) {
            e.addSuppressed(unknown);
        }
        return unwritable("the file cannot be written to " + folder + " (" + Reasons.of(e)
                + "); save to another folder.", e);
    }

    private StackFileException unwritable(String sentence, IOException cause) {
        return new StackFileException(Problem.UNWRITABLE, file, sentence, cause);
    }
}
