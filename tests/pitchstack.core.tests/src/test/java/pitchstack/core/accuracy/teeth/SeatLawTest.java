// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The law of many teeth against figures worked out apart from this program, and against itself turned round. */
class SeatLawTest {
    @ParameterizedTest
    @CsvSource({"-1,0.083315,1.648421", "-0.5,0.197797,1.338364", "0,0.398942,1.167639", "0.5,0.697797,1.075888",
        "1,1.083315,1.030081", "2,2.008491,1.002708", "3,3.000382,1.000101"})
    void givesForceAndSpread(double t, double force, double spread) {
        assertEquals(force, SeatLaw.normalizedForce(t), 6e-7);
        assertEquals(spread, SeatLaw.spreadFactor(t), 6e-7);
    }

    /** 20 teeth of 5000 N/mm and 30 µm need 1197 N for half of them, 3250 N for 84.13 %; of 200 N/mm 48 and 130 N. */
    @ParameterizedTest
    @CsvSource({"5e6,0.5,1197", "5e6,0.8413447,3250", "2e5,0.5,47.9", "2e5,0.8413447,130"})
    void saysWhatPreloadMakesAPartBear(double stiffness, double share, double force) {
        assertEquals(force, new SeatLaw(20, stiffness, 30e-6).preloadN(share), 0.5 * Math.max(1, force / 3000));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.5, 0.84, 0.97, 0.9999})
    void findsTheShareOfAPreloadAgain(double share) {
        SeatLaw law = new SeatLaw(25, 1e6, 20e-6);
        SeatLaw.Point point = law.at(law.preloadN(share));
        assertEquals(share, point.bearingShare(), 1e-9);
        assertEquals(share * 25e6, point.stiffnessNPerM(), 0.1);
    }

    /** With everything bearing x = mean + F/(N·k), and the spread is σ/√N. */
    @Test
    void isPlainAveragingUnderALargePreload() {
        SeatLaw.Point point = new SeatLaw(16, 1e6, 10e-6).at(16e6 * 200e-6);
        assertEquals(200e-6, point.positionM(), 1e-12);
        assertEquals(2.5e-6, point.spreadM(), 1e-12);
        assertEquals(1, point.bearingShare(), 1e-12);
    }

    /** The slope of force over position is the stiffness of what bears. */
    @Test
    void stiffnessIsTheSlopeOfTheForce() {
        double step = 1e-6;
        for (double t = -3; t < 3; t += 0.37) {
            double slope = (SeatLaw.normalizedForce(t + step) - SeatLaw.normalizedForce(t - step)) / (2 * step);
            SeatLaw law = new SeatLaw(10, 2, 1);
            assertEquals(slope * 20, law.at(20 * SeatLaw.normalizedForce(t)).stiffnessNPerM(), 1e-6);
        }
    }

    @Test
    void needsNTimesTheHighestForAllToBear() {
        assertEquals(20 * 1e6 * 30e-6 * 1.867475, new SeatLaw(20, 1e6, 30e-6).fullBearingN(), 1e-3);
    }

    /** Each side of two flanks is a row under half the force: a preload of N·k·σ·sin 2α·(tΦ + φ), a spread of σ√V/√(2N). */
    @Test
    void twoFlanksAreTwoRows() {
        double alpha = Math.toRadians(20);
        TwoFlankLaw law = new TwoFlankLaw(20, 1e6, 30e-6, alpha);
        double preload = 20 * 1e6 * 30e-6 * Math.sin(2 * alpha) * SeatLaw.normalizedForce(0);
        assertEquals(preload, law.preloadN(0.5), 1e-9);
        TwoFlankLaw.Point point = law.at(preload, 0.3);
        assertEquals(0.5, point.bearingShare(), 1e-9);
        assertEquals(30e-6 / Math.sqrt(40) * 1.167639, point.spreadM(), 1e-11);
        assertEquals(0.5 * 2 * 20 * 1e6 * Math.pow(Math.cos(alpha), 2), point.travelStiffnessNPerM(), 1);
        double held = 0.3 * preload * Math.sin(alpha) / (Math.sin(alpha) + 0.3 * Math.cos(alpha));
        assertEquals(held / point.travelStiffnessNPerM(), point.deadBandM(), 1e-15);
        assertTrue(law.fullBearingN() > law.preloadN(0.97));
    }

    @Test
    void refusesNumbersThatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> new SeatLaw(0.5, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new SeatLaw(1, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> new TwoFlankLaw(1, 1, 1, 0));
    }
}
