// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** A text file that a command reads besides the stack file. */
final class TextFile {
    /** Some hundred thousand rows. */
    private static final long MOST_BYTES = 16 << 20;

    private TextFile() {
    }

    /**
     * The text of a file.
     *
     * @param option for which it was named
     * @throws BadInputException if it cannot be read, or is no text in UTF-8
     */
    static String read(String option, String file) throws BadInputException {
        try {
            Path path = Path.of(file);
            if (Files.isRegularFile(path) && Files.size(path) > MOST_BYTES) {
                throw new BadInputException(option + ": “" + file + "” is larger than a list may be, " + (MOST_BYTES >> 20)
                        + " MB.");
            }
            return Files.readString(path);
        } catch (NoSuchFileException e) {
            throw new BadInputException(option + ": there is no file “" + file + "”.");
        } catch (CharacterCodingException e) {
            throw new BadInputException(option + ": “" + file + "” is not text in UTF-8; save it as “CSV UTF-8”.");
        } catch (IOException e) {
            throw new BadInputException(option + ": “" + file + "” cannot be read (" + e.getMessage() + ").");
        } catch (InvalidPathException e) {
            throw new BadInputException(option + ": “" + file + "” cannot be the name of a file here.");
        }
    }
}
