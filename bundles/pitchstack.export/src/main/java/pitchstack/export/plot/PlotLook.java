// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.plot;

/**
 * How a chart is drawn.
 *
 * @param width of the chart in points, at least {@value #LEAST}
 * @param height of the chart in points, at least {@value #LEAST}
 * @param scale pixels for each point: 1, or 1.5 or 2 on a sharp screen
 * @param textPt height of a capital and what hangs below it, roughly: the size of the font in points
 * @param palette its colours
 */
public record PlotLook(int width, int height, double scale, float textPt, Palette palette) {
    /** Smaller leaves nothing beside the numbers. */
    public static final int LEAST = 80;
    /** A picture for a page. */
    private static final float PAGE_TEXT = 13;

    /** Checks the numbers. */
    public PlotLook {
        if (width < LEAST || height < LEAST || !(scale > 0 && textPt > 0)) {
            throw new IllegalArgumentException("No chart of " + width + " x " + height + " at " + scale
                    + " with text of "
                    + textPt);
        }
    }

    /** For a page of the guide: light, two pixels to a point so that print is sharp too. */
    public static PlotLook page(int width, int height) {
        return new PlotLook(width, height, 2, PAGE_TEXT, Palette.LIGHT);
    }
}
