// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

/** What the exit code of a command says. */
final class ExitCode {
    /** The target is reached; the stack is clean. */
    static final int YES = 0;
    /** The target cannot be reached; there are errors or warnings. */
    static final int NO = 1;
    /** The question could not be answered: bad input, or a fault of the program. */
    static final int BAD_INPUT = 2;

    /** Stopped from the keyboard, as shells count it: 128 and the number of the signal. */
    static final int STOPPED = 130;

    private ExitCode() {
    }
}
