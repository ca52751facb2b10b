// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import pitchstack.model.file.SafeWrite;
import pitchstack.model.file.StackFileException;

/**
 * A file that a command is to write, as typed. Nothing is overwritten unasked; with {@code --force} the old file stays
 * as a backup copy.
 *
 * @param option for which the name was typed
 * @param path where
 * @param ending what the name ends with, in lower case, without the point: the format
 */
record OutFile(String option, Path path, String ending) {
    /**
     * Reads the name, before any work is done for it.
     *
     * @param name the name as typed
     * @param force whether a file of this name may be replaced
     * @param endings the endings of the formats that can be written
     * @throws BadInputException if the format is none of them, or the file may not be written
     */
    static OutFile of(String name, boolean force, List<String> endings) throws BadInputException {
        return of("--out", name, force, endings);
    }

    /** The same, typed for another option. */
    static OutFile of(String option, String name, boolean force, List<String> endings) throws BadInputException {
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        if (!endings.contains(ending) || !name.contains(".")) {
            throw new BadInputException(option + ": “" + name + "” must end with ." + String.join(" or .", endings)
                    + ", which tells the format.");
        }
        try {
            Path path = Path.of(name);
            if (!force && Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
                throw new BadInputException(option + ": there is a file “" + name + "” already; give another name, or replace it"
                        + " with --force.");
            }
            return new OutFile(option, path, ending);
        } catch (InvalidPathException e) {
            throw new BadInputException(option + ": “" + name + "” cannot be the name of a file here.");
        }
    }

    /**
     * Writes a text in UTF-8.
     *
     * @throws BadInputException if the folder or the disk does not take it
     */
    void write(String text) throws BadInputException {
        write(text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Writes bytes.
     *
     * @throws BadInputException if the folder or the disk does not take them
     */
    void write(byte[] bytes) throws BadInputException {
        try {
            new SafeWrite(path).write(bytes);
        } catch (StackFileException e) {
            throw new BadInputException(option + ": " + e.getMessage());
        }
    }
}
