// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.nio.file.Path;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;

/**
 * Loading and saving of {@code *.pitchstack} files.
 *
 * <p>Comments in a file are skipped by loading and so lost at the next save; all else that the model does not know is
 * refused, never dropped.
 */
public final class StackFile {
    /** What the name of a stack file ends with, without the point. */
    public static final String EXTENSION = "pitchstack";
    /** What is put after a file's name to name its backup copy. */
    public static final String BACKUP_SUFFIX = ".bak~";
    /** The longest file that is read or written, in bytes: some hundred times a stack with long measurement runs. */
    public static final int MAX_BYTES = 16 << 20;
    /** The most elements that a file may hold, so that a small file cannot fill the memory. */
    static final int MAX_ELEMENTS = 250_000;

    private StackFile() {
    }

    /**
     * Reads a file, all of it or nothing.
     *
     * @param file the file
     * @return the positioner in a resource of its own
     * @throws StackFileException if it cannot be read or holds anything that the model does not allow; the message says
     *     where and what is allowed
     */
    public static StackDocument load(Path file) throws StackFileException {
        return StackDocument.of(file, StackParser.parse(StackText.read(file)));
    }

    /**
     * An empty positioner for a file that is still to be written; nothing is written yet.
     *
     * @param file where it is to be saved
     */
    public static StackDocument create(Path file) {
        return StackDocument.of(file, PitchstackFactory.eINSTANCE.createPositioner());
    }

    /**
     * Writes a positioner. At every instant either the old or the new file stands whole under the name, whatever
     * happens to the program or the machine; the old one is kept as a backup copy under the name with
     * {@value #BACKUP_SUFFIX} behind it. A symbolic link is followed and stays; the permissions of an existing file
     * are kept. Measurement runs without an id get one in the file. The positioner itself is not changed.
     *
     * @param positioner what to write
     * @param file where to write it
     * @throws StackFileException if it could not be read again, or if the folder or the disk does not take it; the old
     *     file then stands as it was
     */
    public static void save(Positioner positioner, Path file) throws StackFileException {
        new SafeWrite(file).write(StackWriter.write(positioner, file));
    }

    /**
     * Writes a positioner as {@link #save} does, but keeps no backup of what was there: for copies that only serve until
     * the next one.
     *
     * @throws StackFileException as {@link #save}
     */
    public static void saveCopy(Positioner positioner, Path file) throws StackFileException {
        new SafeWrite(file).writeOver(StackWriter.write(positioner, file));
    }
}
