// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchstack.core.accuracy.Watch;

/** Simulated seats agree with the laws within the error that they state: here four of it, and what few teeth add. */
class SeatSimulationTest {
    private static final double ALPHA = Math.toRadians(20);
    private static final double STIFFNESS = 1e6;
    private static final double SCATTER = 30e-6;
    private static final int DRAWS = 20_000;
    private static final double SURE = 4;

    private static Seating row(int teeth, double preload, double neighbours) {
        return new Seating(teeth, STIFFNESS, SCATTER, ALPHA, preload, neighbours);
    }

    private static SimulatedSeats run(Seating row, long seed) {
        return SeatSimulation.run(row, DRAWS, seed, Watch.NONE).orElseThrow();
    }

    /** Figures for many teeth; a share of 1 − 1/N of them is missing at most, hence 2 % beside the stated error. */
    @ParameterizedTest
    @CsvSource({"20,0.5", "20,0.8413", "20,0.9772", "50,0.5", "50,0.9772", "100,0.3"})
    void agreesWithTheLawOfManyTeeth(int teeth, double share) {
        TwoFlankLaw law = new TwoFlankLaw(teeth, STIFFNESS, SCATTER, ALPHA);
        double preload = law.preloadN(share);
        SimulatedSeats seats = run(row(teeth, preload, 0), teeth);
        TwoFlankLaw.Point point = law.at(preload, 0);
        assertEquals(0, seats.meanM(), SURE * seats.meanErrorM());
        assertEquals(point.spreadM(), seats.spreadM(), SURE * seats.spreadErrorM() + 0.02 * point.spreadM());
        assertEquals(share, seats.bearingShare(), SURE * seats.bearingErrorShare() + 0.02);
    }

    /** All flanks bear: exactly σ/√(2N), Gaussian, so 95 % lie within 1.96 of it. */
    @Test
    void averagesAllFlanksUnderALargePreload() {
        SimulatedSeats seats = run(row(16, 1e6, 0), 1);
        double spread = SCATTER / Math.sqrt(32);
        assertEquals(spread, seats.spreadM(), SURE * seats.spreadErrorM());
        assertEquals(1, seats.bearingShare());
        assertEquals(1, seats.fullShare());
        assertEquals(1.96 * spread, seats.withinM(0.95), 0.03 * spread);
    }

    /** Next to no preload: one flank on either side bears, each the highest of N; x scatters by σ·S/√2. */
    @Test
    void restsOnTheHighestFlanksWithoutAPreload() {
        SimulatedSeats seats = run(row(10, 1e-9, 0), 2);
        assertEquals(0.1, seats.bearingShare(), 1e-9);
        assertEquals(SCATTER * OrderStatistics.deviationOfHighest(10) / Math.sqrt(2), seats.spreadM(),
                SURE * seats.spreadErrorM() * 1.3);
    }

    @Test
    void averagesErrorsThatHangTogetherAsWellAsFewerTeeth() {
        for (double neighbours : new double[] {0.3, 0.7, 0.9}) {
            SimulatedSeats seats = run(row(25, 1e6, neighbours), 3);
            double expected = SCATTER / Math.sqrt(2 * EffectiveTeeth.fading(25, neighbours));
            assertEquals(expected, seats.spreadM(), SURE * seats.spreadErrorM(), "ρ = " + neighbours);
        }
    }

    /** At the preload that the law gives for all flanks to bear, about half of the rows do. */
    @Test
    void theLawsPreloadForAllFlanksIsThatOfTheSimulation() {
        TwoFlankLaw law = new TwoFlankLaw(20, STIFFNESS, SCATTER, ALPHA);
        double full = run(row(20, law.fullBearingN(), 0), 4).fullShare();
        assertTrue(0.4 < full && full < 0.7, full + " of the rows bear fully");
    }

    @Test
    void seatsEachDrawAsTheClosedFormDoes() {
        // With one tooth there is nothing to sort: x is half the sum of the two flanks, whatever the preload.
        SimulatedSeats seats = run(row(1, 10, 0), 5);
        assertEquals(SCATTER / Math.sqrt(2), seats.spreadM(), SURE * seats.spreadErrorM());
    }

    @Test
    void repeatsWithTheSameSeedOnly() {
        Seating row = row(12, 50, 0.2);
        assertArrayEquals(run(row, 7).positionsM(), run(row, 7).positionsM());
        assertTrue(run(row, 7).meanM() != run(row, 8).meanM());
    }

    @Test
    void tellsHowFarItIsAndEndsWhenAsked() {
        List<Long> told = new ArrayList<>();
        assertTrue(SeatSimulation.run(row(5, 10, 0), 10_000, 1, (done, of) -> told.add(done)).isPresent());
        assertEquals(0, told.get(0));
        assertEquals(10_000, told.get(told.size() - 1));
        assertTrue(told.size() > 10);
        assertEquals(Optional.empty(), SeatSimulation.run(row(5, 10, 0), 10_000, 1, (done, of) -> done < 3000));
    }

    @Test
    void refusesARowThatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> row(0, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> row(1, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> row(1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> SeatSimulation.run(row(1, 1, 0), 1, 0, Watch.NONE));
    }
}
