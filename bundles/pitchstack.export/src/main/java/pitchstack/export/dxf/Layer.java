// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.dxf;

/**
 * A layer of a drawing.
 *
 * @param name capital letters, digits, - and _, at most 31: all that Release 12 takes
 * @param colour 1 red, 2 yellow, 3 green, 4 cyan, 5 blue, 6 magenta, 7 black or white as the ground asks
 * @param lineType how its lines are drawn
 */
public record Layer(String name, int colour, LineType lineType) {
    /** Solid lines in black or white. */
    public Layer(String name) {
        this(name, 7, LineType.CONTINUOUS);
    }

    /** @throws IllegalArgumentException if the name or the colour is none */
    public Layer {
        if (!name.matches("[A-Z0-9_-]{1,31}") || colour < 1 || colour > 255) {
            throw new IllegalArgumentException("No layer: " + name + ", colour " + colour);
        }
    }
}
