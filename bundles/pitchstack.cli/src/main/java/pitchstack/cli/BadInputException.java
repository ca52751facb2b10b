// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

/** Something typed, or a file named, that cannot be used. The message is one sentence for the person who typed it. */
final class BadInputException extends Exception {
    private static final long serialVersionUID = 1L;

    /** @param sentence what is wrong and what is allowed */
    BadInputException(String sentence) {
        super(sentence);
    }
}
