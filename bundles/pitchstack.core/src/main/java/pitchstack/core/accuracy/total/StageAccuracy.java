// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.total;

import java.util.Map;
import java.util.Optional;
import pitchstack.core.stack.RowPair;

/**
 * How well a stage is made and held.
 *
 * @param title how lines of the budget name it
 * @param rows the two rows
 * @param pitchM of both, above 0
 * @param base how well the base row is made
 * @param rider how well the rider row is made
 * @param seatM standard deviation of where one flank seats from time to time, at least 0: dirt, burrs, film
 * @param hold how the rows are held together; without it all flanks are taken to bear and friction is left out
 * @param mappedM standard uncertainty of the measured errors of single indices, by index; where there is one, it takes the
 *     place of what the teeth may be off
 */
public record StageAccuracy(String title, RowPair rows, double pitchM, RowAccuracy base, RowAccuracy rider, double seatM,
        Optional<Hold> hold, Map<Integer, Double> mappedM) {
    /** Copies the map and checks the numbers. */
    public StageAccuracy {
        mappedM = Map.copyOf(mappedM);
        if (!(pitchM > 0 && seatM >= 0)) {
            throw new IllegalArgumentException(title + ": a pitch is above 0 and a scatter at least 0, not " + pitchM + " and "
                    + seatM);
        }
    }

    /** A stage no index of which was measured. */
    public StageAccuracy(String title, RowPair rows, double pitchM, RowAccuracy base, RowAccuracy rider, double seatM,
            Optional<Hold> hold) {
        this(title, rows, pitchM, base, rider, seatM, hold, Map.of());
    }
}
