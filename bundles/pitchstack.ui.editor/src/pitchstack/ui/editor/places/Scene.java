// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.places;

import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.RulerStep;

/**
 * All that the figures need to draw an axis once.
 *
 * @param spec the axis in numbers
 * @param places where everything stands
 * @param mapping from places to pixels
 * @param bands the heights
 * @param left the leftmost pixel that is seen, where the labels are put
 * @param top the topmost pixel that is seen, where the ruler is put
 * @param width how many pixels are seen across
 * @param height how many pixels are seen down
 */
public record Scene(AxisSpec spec, AxisPlaces places, Mapping mapping, Bands bands, int left, int top, int width,
        int height) {
    /** The least distance of two numbers on the ruler. */
    private static final int LEAST_STEP_PX = 84;

    /** Nearer to each other two marks on the ruler could not be told apart. */
    public static final int LEAST_DOTS_PX = 4;

    /** The least distance of two positions that are marked on the ruler, counts. */
    public long dotsApart() {
        return (long) Math.max(1, Math.ceil(LEAST_DOTS_PX / mapping.pxPerCount()));
    }

    /** The pixels across in which teeth are seen, right of the labels. */
    public Extent open() {
        return new Extent(left + Mapping.GUTTER, Math.max(left + Mapping.GUTTER, left + width));
    }

    /** The divisions of the ruler. */
    public RulerStep ruler() {
        return RulerStep.of(spec.scale(), LEAST_STEP_PX / mapping.pxPerCount());
    }

    /** The place of a position; on a rotary axis that of its turn which is nearest to the carriage. */
    public double place(long position) {
        long turn = spec.scale().turn();
        return turn == 0 ? position : position + turn * (double) Math.round((places.carriage() - position) / turn);
    }

    /** The small tick of the ruler that is nearest to a pixel, as a position not brought into one turn. */
    public long snapped(double px) {
        RulerStep step = ruler();
        double tick = step.counts() / step.parts();
        return Math.round(Math.rint(mapping.place(px) / tick) * tick);
    }

    /** The pixels of a row. */
    public Extent px(RowPlace row) {
        return mapping.px(row.extent());
    }

    /** How much of a row can be shown. */
    public Detail detail(RowPlace row) {
        return new Detail(row.pitch() * mapping.pxPerCount());
    }
}
