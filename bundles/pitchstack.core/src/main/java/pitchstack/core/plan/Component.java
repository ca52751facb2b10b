// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * Neighbouring stages that limits on the way tie together, directly or through others. What limits make of a move is
 * settled in each component by itself.
 *
 * @param lowest the lowest stage
 * @param highest the highest stage
 * @param bands the limits; those of one component concern no stage of another
 */
record Component(int lowest, int highest, List<ShiftBand> bands) {
    /** The components of an axis, lowest first; a stage that no limit concerns is one by itself. */
    static List<Component> of(int stages, List<ShiftBand> bands) {
        List<Component> components = new ArrayList<>();
        for (int lowest = 0; lowest < stages; ) {
            int highest = lowest;
            for (int j = lowest; j <= highest; j++) {
                for (ShiftBand band : bands) {
                    highest = band.lowest() == j ? Math.max(highest, band.highest()) : highest;
                }
            }
            int from = lowest;
            int to = highest;
            components.add(new Component(lowest, highest,
                    bands.stream().filter(band -> from <= band.lowest() && band.lowest() <= to).toList()));
            lowest = highest + 1;
        }
        return components;
    }

    /** Whether these are its stages, in order. */
    boolean isMadeOf(StageTable[] stages) {
        return stages.length == highest - lowest + 1 && stages[0].stage == lowest;
    }
}
