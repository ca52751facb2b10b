// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.places;

/**
 * From places to pixels of the drawing. Only the length is scaled, so that the height of a row does not change with the
 * zoom; that, and rows of many metres, is why this is not the zoom of a whole picture.
 *
 * @param reach the places that the drawing holds
 * @param pxPerCount pixels a count, above 0
 */
public record Mapping(Extent reach, double pxPerCount) {
    /** Pixels at the left end of the drawing that the labels cover. */
    public static final int GUTTER = 212;
    /** Free pixels at both ends, so that an end is seen to be one. */
    public static final int MARGIN = 28;
    /** A tooth of the finest row is drawn at most this wide: enough to see two pitches drift apart. */
    static final double WIDEST_TOOTH_PX = 240;
    /** Zooming out stops at this part of the fitting scale. */
    private static final double LEAST_OF_FIT = 0.5;

    /**
     * The scale at which the whole reach is seen.
     *
     * @param reach what is to be seen, not empty
     * @param widthPx the width that is there, labels included
     */
    public static Mapping fit(Extent reach, int widthPx) {
        int free = Math.max(1, widthPx - GUTTER - 2 * MARGIN);
        return new Mapping(reach, free / reach.length());
    }

    /**
     * A larger or smaller scale, within what is useful.
     *
     * @param factor above 1 to enlarge
     * @param finestPitch the finest pitch, counts, or 0 if there is none
     * @param widthPx the width that is there, labels included
     */
    public Mapping zoomed(double factor, double finestPitch, int widthPx) {
        double fit = fit(reach, widthPx).pxPerCount();
        double most = finestPitch > 0 ? Math.max(fit, WIDEST_TOOTH_PX / finestPitch) : fit;
        return new Mapping(reach, Math.max(fit * LEAST_OF_FIT, Math.min(most, pxPerCount * factor)));
    }

    /** The same scale with every place further right by some counts. */
    public Mapping shifted(double counts) {
        return counts == 0 ? this : new Mapping(reach.shift(-counts), pxPerCount);
    }

    /** The pixel of a place. */
    public double px(double place) {
        return GUTTER + MARGIN + (place - reach.from()) * pxPerCount;
    }

    /** The pixels of a stretch. */
    public Extent px(Extent stretch) {
        return new Extent(px(stretch.from()), px(stretch.to()));
    }

    /** The place of a pixel. */
    public double place(double px) {
        return reach.from() + (px - GUTTER - MARGIN) / pxPerCount;
    }

    /** The places of a stretch of pixels. */
    public Extent places(Extent stretch) {
        return new Extent(place(stretch.from()), place(stretch.to()));
    }

    /** The width of the whole drawing in pixels. */
    public int width() {
        return (int) Math.ceil(px(reach.to())) + MARGIN;
    }
}
