// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

/**
 * A place in a text.
 *
 * @param line counted from 1, or 0 for none
 * @param column counted from 1 in UTF-16 units, or 0 for none
 */
record Place(int line, int column) {
    /** The text as a whole. */
    static final Place NONE = new Place(0, 0);

    /** The place in words, to follow a file's name; empty for the text as a whole. */
    String words() {
        return line == 0 ? "" : ", line " + line + ", column " + column;
    }
}
