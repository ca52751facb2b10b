// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

/** A text that is no value of its attribute. Its message says what it is not, and what would be right. */
final class BadValueException extends Exception {
    private static final long serialVersionUID = 1L;

    BadValueException(String message) {
        super(message);
    }
}
