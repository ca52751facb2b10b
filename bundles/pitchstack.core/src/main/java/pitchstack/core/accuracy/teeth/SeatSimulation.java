// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import pitchstack.core.accuracy.Watch;

/**
 * Draws rows by chance and seats each. The same seed gives the same draws on one version of Java. Friction is left out; see
 * {@link TwoFlankTeeth#deadBandM}.
 */
public final class SeatSimulation {
    /** Between two questions whether to go on lie a few milliseconds at most. */
    private static final int BATCH = 512;

    private final Seating row;
    private final SplittableRandom random;
    private final double[] leftM;
    private final double[] rightM;
    private final double forceOverStiffnessM;
    private final double keep;
    private final double renew;

    private double sum;
    private double squares;
    private double bearing;
    private double bearingSquares;
    private int full;

    private SeatSimulation(Seating row, long seed) {
        this.row = row;
        random = new SplittableRandom(seed);
        leftM = new double[row.teeth()];
        rightM = new double[row.teeth()];
        // Along the travel: force per side Fz/(2·sin α), offsets times cos α on either side of the equation.
        forceOverStiffnessM = row.preloadN() / (2 * Math.sin(row.flankAngleRad()) * row.stiffnessNPerM()
                * Math.cos(row.flankAngleRad()));
        keep = row.neighbours();
        renew = Math.sqrt(1 - keep * keep);
    }

    /**
     * Simulates.
     *
     * @param draws at least 2
     * @return what was found, or nothing where the watch ended it
     */
    public static Optional<SimulatedSeats> run(Seating row, int draws, long seed, Watch watch) {
        if (draws < 2) {
            throw new IllegalArgumentException("A spread needs at least two draws, not " + draws);
        }
        SeatSimulation simulation = new SeatSimulation(row, seed);
        double[] positionsM = new double[draws];
        for (int i = 0; i < draws; i++) {
            if (i % BATCH == 0 && !watch.goOn(i, draws)) {
                return Optional.empty();
            }
            positionsM[i] = simulation.draw();
        }
        watch.goOn(draws, draws);
        return Optional.of(simulation.found(positionsM));
    }

    private double draw() {
        fill(leftM);
        fill(rightM);
        int lefts = OneSidedTeeth.bearing(leftM, forceOverStiffnessM);
        int rights = OneSidedTeeth.bearing(rightM, forceOverStiffnessM);
        double x = (OneSidedTeeth.meanM(leftM, lefts, forceOverStiffnessM)
                - OneSidedTeeth.meanM(rightM, rights, forceOverStiffnessM)) / 2;
        int bears = lefts + rights;
        double share = bears / (2.0 * row.teeth());
        sum += x;
        squares += x * x;
        bearing += share;
        bearingSquares += share * share;
        full += bears == 2 * row.teeth() ? 1 : 0;
        return x;
    }

    /** Errors of one side along the row. */
    private void fill(double[] errorsM) {
        double error = random.nextGaussian();
        for (int i = 0; i < errorsM.length; i++) {
            errorsM[i] = row.scatterM() * error;
            error = keep * error + renew * random.nextGaussian();
        }
    }

    private SimulatedSeats found(double[] positionsM) {
        int n = positionsM.length;
        Arrays.sort(positionsM);
        double mean = sum / n;
        double share = bearing / n;
        return new SimulatedSeats(n, mean, Math.sqrt(Math.max(0, squares - n * mean * mean) / (n - 1)), share,
                Math.sqrt(Math.max(0, bearingSquares / n - share * share) / n), (double) full / n, positionsM);
    }
}
