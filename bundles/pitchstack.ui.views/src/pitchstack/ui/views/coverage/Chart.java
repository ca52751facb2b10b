// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import pitchstack.core.units.LinearScale;
import pitchstack.core.units.RotaryScale;
import pitchstack.core.units.Scale;
import pitchstack.ui.views.coverage.strip.Shares;
import pitchstack.ui.views.coverage.strip.Sight;

/**
 * What the strip is drawn from.
 *
 * @param scale the scale of the axis
 * @param shares how the positions of the travel are reached; there is at least one position
 * @param sight the part in sight
 * @param carriage where the carriage stands
 */
record Chart(Scale scale, Shares shares, Sight sight, long carriage) {
    /** At the closest zoom so many of the smallest sizes people read, or arc seconds, are in sight. */
    private static final int LEAST_SIZES = 20;

    /** The whole travel. */
    static Chart all(Scale scale, Shares shares, long carriage) {
        long size = scale.turn() == 0 ? scale.parse(scale.smallestSize()) : scale.turn() / RotaryScale.ARC_SECONDS;
        return new Chart(scale, shares, Sight.all(shares.lowest(), shares.highest(), (double) LEAST_SIZES * size), carriage);
    }

    Chart look(Sight at) {
        return new Chart(scale, shares, at, carriage);
    }

    Chart carriageAt(long position) {
        return new Chart(scale, shares, sight, position);
    }

    /** The unit after a number of the ruler, with a space before it; nothing for angles, whose numbers carry their own. */
    String unit() {
        return scale instanceof LinearScale linear ? " " + linear.unit().symbol() : "";
    }
}
