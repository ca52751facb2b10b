// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Optional;

/**
 * The figures that sum up a coverage. Lengths are in counts of the axis's scale, both ends of a stretch included.
 *
 * @param clean how much of the travel is reached over clean teeth
 * @param worn how much is reached only over worn teeth
 * @param not how much is not reached
 * @param gaps how many stretches inside the travel are not reached
 * @param largestGap the largest of them, the lowest of equals; empty where there is none
 */
public record CoverageSummary(long clean, long worn, long not, int gaps, Optional<Stretch> largestGap) {
    /** The whole travel; 0 where nothing can be set. */
    public long travel() {
        return clean + worn + not;
    }

    /** The share of the travel that is reached in one way, from 0 to 1; 0 where there is no travel. */
    public double share(Reached reached) {
        long part = switch (reached) {
            case CLEAN -> clean;
            case WORN -> worn;
            case NOT -> not;
        };
        return travel() == 0 ? 0 : (double) part / travel();
    }
}
