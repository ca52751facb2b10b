// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One-sided springs against hand calculation and against plain bisection of the equilibrium. */
class OneSidedTeethTest {
    private static final double[] FOUR = {0, 5, 10, 20};
    private static final double[] TEN = {-12, 7, 3, -4, 9, -1, 5, -8, 2, -1};

    /** k = 1; thresholds where the next tooth comes to bear are 0, 5, 15, 45. */
    @ParameterizedTest
    @CsvSource({"1,1,1", "5,5,1", "10,7.5,2", "15,10,2", "30,15,3", "45,20,3", "60,23.75,4", "100,33.75,4"})
    void seatsFourTeethByHand(double force, double position, int bearing) {
        Seat seat = new OneSidedTeeth(FOUR, 1).seat(force);
        assertEquals(position, seat.positionM(), 1e-12);
        assertEquals(bearing, seat.bearing());
        assertEquals(bearing, seat.stiffnessNPerM(), 1e-12);
    }

    /** By hand: e.g. with −12, −8, −4 bearing x = (20 − 24)/3. */
    @ParameterizedTest
    @CsvSource({"5,-7.5,2", "20,-1.3333333333333333,3", "50,4.142857142857143,7", "83,8.222222222222221,9", "100,10,10"})
    void seatsTenTeethByHand(double force, double position, int bearing) {
        Seat seat = new OneSidedTeeth(TEN, 1).seat(force);
        assertEquals(position, seat.positionM(), 1e-12);
        assertEquals(bearing, seat.bearing());
    }

    @Test
    void saysFromWhichForceOnAllBear() {
        assertEquals(45, new OneSidedTeeth(FOUR, 1).fullBearingN(), 1e-12);
        assertEquals(90, new OneSidedTeeth(TEN, 1).fullBearingN(), 1e-12);
    }

    /** Linear pitch mismatch Δ: k·Δ·N(N − 1)/2. */
    @ParameterizedTest
    @CsvSource({"4,30", "10,225", "20,950"})
    void mismatchOfPitchesCostsPreloadWithTheSquareOfTheTeeth(int teeth, double force) {
        double[] offsets = new double[teeth];
        Arrays.setAll(offsets, i -> 5.0 * i);
        assertEquals(force, new OneSidedTeeth(offsets, 1).fullBearingN(), 1e-9);
    }

    @Test
    void averagesByStiffnessWhereAllBear() {
        Seat seat = new OneSidedTeeth(new double[] {3, 0}, new double[] {1, 3}).seat(1000);
        assertEquals((1000 + 3.0) / 4, seat.positionM(), 1e-12);
        assertEquals(4, seat.stiffnessNPerM());
        assertEquals(9, new OneSidedTeeth(new double[] {3, 0}, new double[] {1, 3}).fullBearingN(), 1e-12);
    }

    /** Seeds 0 to 999: bisection on Σ k·max(0, x − e) = F, which needs no order. */
    @Test
    void agreesWithBisectionOfTheEquilibrium() {
        for (long seed = 0; seed < 1000; seed++) {
            Random random = new Random(seed);
            int n = 1 + random.nextInt(12);
            double[] offsets = random.doubles(n, -10, 10).map(Math::rint).toArray();
            double[] stiffnesses = random.doubles(n, 0.5, 2).toArray();
            double force = random.nextDouble() * 60;
            double low = -20;
            double high = 200;
            for (int i = 0; i < 100; i++) {
                double middle = (low + high) / 2;
                double held = 0;
                for (int j = 0; j < n; j++) {
                    held += stiffnesses[j] * Math.max(0, middle - offsets[j]);
                }
                if (held < force) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            assertEquals(low, new OneSidedTeeth(offsets, stiffnesses).seat(force).positionM(), 1e-9, "seed " + seed);
        }
    }

    /** Seeds 0 to 999. */
    @Test
    void findsTheSameWithoutSorting() {
        for (long seed = 0; seed < 1000; seed++) {
            Random random = new Random(seed);
            double[] offsets = random.doubles(1 + random.nextInt(40), -10, 10).toArray();
            double force = random.nextDouble() * random.nextInt(200) + 1e-9;
            Seat seat = new OneSidedTeeth(offsets, 1).seat(force);
            double[] shuffled = offsets.clone();
            int bearing = OneSidedTeeth.bearing(shuffled, force);
            assertEquals(seat.bearing(), bearing, "seed " + seed);
            assertEquals(seat.positionM(), OneSidedTeeth.meanM(shuffled, bearing, force), 1e-10, "seed " + seed);
            assertArrayEquals(Arrays.stream(offsets).sorted().toArray(), Arrays.stream(shuffled).sorted().toArray());
        }
    }

    @Test
    void standsOnEqualTeethWhereTheForceIsNextToNothing() {
        assertEquals(2, OneSidedTeeth.bearing(new double[] {3, 5, 3}, 1e-30));
        assertEquals(1, OneSidedTeeth.bearing(new double[] {3}, 1e-30));
    }

    @Test
    void restsOnTheHighestToothWithoutAForce() {
        assertEquals(-12, new OneSidedTeeth(TEN, 1).seat(0).positionM());
        assertThrows(IllegalArgumentException.class, () -> new OneSidedTeeth(TEN, 1).seat(-1));
        assertThrows(IllegalArgumentException.class, () -> new OneSidedTeeth(new double[0], 1));
        assertThrows(IllegalArgumentException.class, () -> new OneSidedTeeth(TEN, 0));
    }
}
