// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

/** What the layout has to know of the letters. */
@FunctionalInterface
public interface TextMeasure {
    /**
     * How wide a text comes out.
     *
     * @param text one line of letters that there are
     * @param heightMm of its capital letters
     * @return mm
     */
    double widthMm(String text, double heightMm);

    /** The text with letters that there are none of replaced, and without line breaks and other marks of control. */
    default String printable(String text) {
        return text;
    }
}
