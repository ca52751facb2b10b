// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import java.util.Arrays;

/**
 * What a simulation found, with how far chance may have led it off.
 *
 * @param draws how many rows were drawn
 * @param meanM mean position; its standard error is {@link #meanErrorM}
 * @param spreadM standard deviation of the position; its standard error is {@link #spreadErrorM}
 * @param bearingShare which part of the flanks bears on average
 * @param bearingErrorShare standard error of that part
 * @param fullShare in which part of the draws every flank bears
 * @param positionsM every position, sorted
 */
public record SimulatedSeats(int draws, double meanM, double spreadM, double bearingShare, double bearingErrorShare,
        double fullShare, double[] positionsM) {
    /** The standard error of the mean: spread/√n. */
    public double meanErrorM() {
        return spreadM / Math.sqrt(draws);
    }

    /** The standard error of the spread, for positions that are near Gaussian: spread/√(2n). */
    public double spreadErrorM() {
        return spreadM / Math.sqrt(2.0 * draws);
    }

    /** The distance from 0 within which a part of the draws lies, above 0 and up to 1. */
    public double withinM(double part) {
        double[] sizes = Arrays.stream(positionsM).map(Math::abs).sorted().toArray();
        return sizes[(int) Math.ceil(part * sizes.length) - 1];
    }
}
