// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

/** Ends work that would take more memory than it may; caught where the package is entered. */
final class TooMuch extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** Nobody reads the stack. */
    TooMuch() {
        super(null, null, false, false);
    }
}
