// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import java.util.Optional;
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
 * @param supposed how they would be reached with the supposed marks; empty where none is supposed
 * @param cost the positions that the selected mark costs; empty where none is selected
 */
record Chart(Scale scale, Shares shares, Sight sight, long carriage, Optional<Shares> supposed, Optional<Shares> cost) {
    /** At the closest zoom so many of the smallest sizes people read, or arc seconds, are in sight. */
    private static final int LEAST_SIZES = 20;

    /** The whole travel. */
    static Chart all(Scale scale, Charted charted, long carriage) {
        Shares shares = charted.shares();
        long size = scale.turn() == 0 ? scale.parse(scale.smallestSize()) : scale.turn() / RotaryScale.ARC_SECONDS;
        return new Chart(scale, shares, Sight.all(shares.lowest(), shares.highest(), (double) LEAST_SIZES * size), carriage,
                charted.supposed().map(Charted.Compared::shares), charted.cost().map(Charted.Compared::shares));
    }

    Chart look(Sight at) {
        return new Chart(scale, shares, at, carriage, supposed, cost);
    }

    Chart carriageAt(long position) {
        return new Chart(scale, shares, sight, position, supposed, cost);
    }

    /** The unit after a number of the ruler, with a space before it; nothing for angles, whose numbers carry their own. */
    String unit() {
        return scale instanceof LinearScale linear ? " " + linear.unit().symbol() : "";
    }
}
