// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

/** What comes of a request. */
public sealed interface DrawingAnswer {
    /** The drawing. */
    record Drawn(Drawing drawing) implements DrawingAnswer { }

    /**
     * Nothing can be drawn: a tooth cannot be made, a size cannot be read, or the sheet is too small.
     *
     * @param sentence says so, with the way out
     */
    record Refused(String sentence) implements DrawingAnswer { }
}
