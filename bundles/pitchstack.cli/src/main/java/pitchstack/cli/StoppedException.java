// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

/** Work that was stopped from the keyboard before it had a result. */
final class StoppedException extends Exception {
    /** What a person is told. */
    static final String SENTENCE = "Stopped before the work was done; no answer, and no file was written.";

    private static final long serialVersionUID = 1L;

    StoppedException() {
        super(SENTENCE);
    }
}
