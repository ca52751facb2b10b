// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.io.IOException;
import java.nio.file.Path;

/** A file that cannot be read or written. Its message is one sentence that can be shown as it is. */
public final class StackFileException extends IOException {
    private static final long serialVersionUID = 1L;

    /** What stands in the way. */
    public enum Problem {
        /** There is no such file, or it may not be read. */
        UNREADABLE,
        /** It is larger, deeper or fuller than a stack file may be. */
        TOO_LARGE,
        /** It is something else than a stack file. */
        NOT_A_STACK_FILE,
        /** It was written for a later version of the model. */
        NEWER_VERSION,
        /** It is a stack file with something in it that the model does not allow. */
        WRONG_CONTENT,
        /** What is to be saved could not be read again. */
        UNSAVABLE,
        /** The folder or the disk does not take it. */
        UNWRITABLE
    }

    private final Problem problem;
    private final transient Path file;
    private final int line;
    private final int column;

    /**
     * A failure of the file as a whole.
     *
     * @param problem what stands in the way
     * @param file the file
     * @param sentence what is wrong and what is allowed, without the file's name
     * @param cause what the system said, or null
     */
    StackFileException(Problem problem, Path file, String sentence, Throwable cause) {
        this(problem, file, Place.NONE, sentence, cause);
    }

    /**
     * A failure at a place in the file.
     *
     * @param problem what stands in the way
     * @param file the file
     * @param place where in its text
     * @param sentence what is wrong there and what is allowed, without the place
     * @param cause what the parser said, or null
     */
    StackFileException(Problem problem, Path file, Place place, String sentence, Throwable cause) {
        super(nameOf(file) + place.words() + ": " + sentence, cause);
        this.problem = problem;
        this.file = file;
        this.line = place.line();
        this.column = place.column();
    }

    /** What stands in the way. */
    public Problem problem() {
        return problem;
    }

    /** The file, as the caller named it. */
    public Path file() {
        return file;
    }

    /** The line, counted from 1, or 0 where the file as a whole is meant. */
    public int line() {
        return line;
    }

    /** The column, counted from 1 in UTF-16 units, or 0 where the file as a whole is meant. */
    public int column() {
        return column;
    }

    private static String nameOf(Path file) {
        Path name = file.getFileName();
        return (name == null ? file : name).toString();
    }
}
