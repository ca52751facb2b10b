// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage.strip;

import pitchstack.core.units.RulerStep;
import pitchstack.core.units.Scale;

/**
 * A position pointed at, no finer than a person can point.
 *
 * @param text the position as people would type it, in the unit of the axis
 * @param position the same in counts
 */
public record Spot(String text, long position) {
    /** A ruler's step is up to so many times what was asked for. */
    private static final double STEP_SPREAD = 2.5;

    /**
     * The roundest position within about half a pixel of a place.
     *
     * @param scale the scale of the axis
     * @param sight what is in sight
     * @param x the place, from 0 at the left edge to {@code width} at the right
     * @param width in pixels, above 0
     */
    public static Spot at(Scale scale, Sight sight, double x, int width) {
        RulerStep step = RulerStep.of(scale, sight.size() / width / STEP_SPREAD);
        double within = Math.max(sight.first(), Math.min(sight.last(), sight.position(x, width)));
        String text = step.label().apply(Math.round(within / step.counts()));
        return new Spot(text, scale.parse(text));
    }
}
