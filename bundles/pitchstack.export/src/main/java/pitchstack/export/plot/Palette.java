// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.plot;

import java.awt.Color;

/**
 * Colours of a chart, each 0xRRGGBB.
 *
 * @param ground behind all
 * @param text words and numbers
 * @param first the first line, and what repeats
 * @param second the second line, and what varies
 * @param mark what to look at: where things stand now, what is off
 */
public record Palette(int ground, int text, int first, int second, int mark) {
    /** Dark on light, as on paper. */
    public static final Palette LIGHT = new Palette(0xffffff, 0x202020, 0x1f4e79, 0xb35900, 0xb0182c);
    /** Light on dark. */
    public static final Palette DARK = new Palette(0x2b2b2b, 0xe4e4e4, 0x8ab8e0, 0xf0a35c, 0xff8090);
    private static final int HALF = 3 * 128;

    /** Those of these colours that stand out from a ground, with this ground and this text. */
    public static Palette on(int ground, int text) {
        int brightness = (ground >> 16 & 0xff) + (ground >> 8 & 0xff) + (ground & 0xff);
        Palette base = brightness < HALF ? DARK : LIGHT;
        return new Palette(ground, text, base.first, base.second, base.mark);
    }

    /** A colour between the ground and another. */
    Color faint(int colour, double part) {
        return new Color(blend(16, colour, part) << 16 | blend(8, colour, part) << 8 | blend(0, colour, part));
    }

    private int blend(int shift, int colour, double part) {
        int from = ground >> shift & 0xff;
        int to = colour >> shift & 0xff;
        return (int) Math.round(from + (to - from) * part);
    }
}
