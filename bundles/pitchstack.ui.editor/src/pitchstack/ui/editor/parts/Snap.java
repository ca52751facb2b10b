// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.OptionalLong;
import pitchstack.core.units.TrueMinus;
import pitchstack.ui.editor.places.Dots;
import pitchstack.ui.editor.places.Scene;

/**
 * Where a mark goes that is dragged to a pixel: to the small tick of the ruler or the dot that is nearest. Dots that are
 * thinned out stand for others, so that then only ticks count.
 *
 * @param position a count of the scale
 * @param remark what is known of it, or empty
 */
record Snap(long position, String remark) {
    /** @param standing the place of the carriage, which dots count from */
    static Snap at(double px, Scene scene, Dots dots, double standing) {
        long tick = scene.snapped(px);
        if (dots.offsets().length == 0 || dots.thinned()) {
            return new Snap(scene.spec().scale().wrap(tick), "");
        }
        double wanted = scene.mapping().place(px);
        OptionalLong dot = dots.nearest(wanted - standing);
        long offset = Math.abs(wanted - standing) <= Math.abs(wanted - standing - dot.getAsLong()) ? 0 : dot.getAsLong();
        boolean onDot = Math.abs(standing + offset - wanted) <= Math.abs(tick - wanted);
        long position = scene.spec().scale().wrap(onDot ? dots.from() + offset : tick);
        boolean reached = onDot || position == scene.spec().scale().wrap(dots.from() + offset);
        return new Snap(position, reached ? ", in reach" : dots.ended() ? "" : ", between positions in reach");
    }

    /** Its words for the mark that is dragged there. */
    String words(Sliding mark, Scene scene) {
        return mark.dragged(TrueMinus.in(scene.spec().scale().format(position))) + remark;
    }
}
