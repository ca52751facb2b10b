// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

/** Whole numbers as people read them, with a minus and not a hyphen. */
final class Signed {
    private Signed() {
    }

    /** {@code −3}, {@code 0}, {@code 12}. */
    static String of(int number) {
        return Integer.toString(number).replace('-', '−');
    }
}
