// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

/** What comes of a request. */
public sealed interface DrawingAnswer {
    /** The drawing. */
    record Drawn(Drawing drawing) implements DrawingAnswer { }

    /**
     * The sheet or the scale that was asked for is too small or too large.
     *
     * @param sentence says so, with the way out
     */
    record DoesNotFit(String sentence) implements DrawingAnswer { }
}
