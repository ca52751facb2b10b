// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Teeth with two flanks against hand calculation, and against an active-set solution of the two equations. */
class TwoFlankTeethTest {
    private static final double ALPHA = Math.toRadians(20);
    private static final double COS = Math.cos(ALPHA);
    private static final double SIN = Math.sin(ALPHA);

    private static TwoFlankSeat.Seated seat(double[] left, double[] right, double travel, double preload) {
        return assertInstanceOf(TwoFlankSeat.Seated.class, new TwoFlankTeeth(left, right, 1, ALPHA).seat(travel, preload));
    }

    /** All four flanks of two equal teeth share: z = F/(4·sin² α). */
    @Test
    void seatsTwoTeethWithoutError() {
        TwoFlankSeat.Seated seat = seat(new double[2], new double[2], 0, 10);
        assertEquals(0, seat.positionM(), 1e-15);
        assertEquals(21.37158043, seat.depthM(), 1e-8);
        assertEquals(10 / (4 * SIN * SIN), seat.depthM(), 1e-12);
    }

    @Test
    void seatsBetweenTwoTeethThatDiffer() {
        TwoFlankSeat.Seated seat = seat(new double[] {0, 10}, new double[] {0, 10}, 0, 10);
        assertEquals(5, seat.positionM(), 1e-12);
        assertEquals(21.37158043, seat.depthM(), 1e-8);
    }

    /** x = Fx/(2·N·k·cos² α). */
    @Test
    void givesWayAlongTheTravel() {
        TwoFlankSeat.Seated seat = seat(new double[4], new double[4], 8, 30);
        assertEquals(1.13247433, seat.positionM(), 1e-8);
        assertEquals(8 / (8 * COS * COS), seat.positionM(), 1e-12);
        assertEquals(8 * COS * COS, seat.travelStiffnessNPerM(), 1e-12);
    }

    /** The mean of all flanks, where all bear: (−6 + 4)/8. */
    @Test
    void seatsAtTheMeanOfAllFlanksWhereAllBear() {
        double[] left = {-12, 7, 3, -4};
        double[] right = {-6, 1, 9, 0};
        TwoFlankSeat.Seated seat = seat(left, right, 0, 200);
        assertEquals(-0.25, seat.positionM(), 1e-12);
        assertEquals(4, seat.leftBearing());
        assertEquals(4, seat.rightBearing());
        assertTrue(new TwoFlankTeeth(left, right, 1, ALPHA).fullBearingN() < 200);
    }

    /** N·k·2·cos² α along and 2·sin² α into the teeth, each tooth: 1.766044 and 0.233956 at 20°. */
    @ParameterizedTest
    @CsvSource({"20,1.766044,0.233956", "30,1.5,0.5", "45,1,1"})
    void isAsStiffAsItsFlanks(double degrees, double along, double into) {
        TwoFlankTeeth teeth = new TwoFlankTeeth(new double[1], new double[1], 1, Math.toRadians(degrees));
        TwoFlankSeat.Seated seat = (TwoFlankSeat.Seated) teeth.seat(0, 1);
        assertEquals(along, seat.travelStiffnessNPerM(), 1e-6);
        assertEquals(into, 1 / seat.depthM(), 1e-6);
    }

    @Test
    void climbsOutWhereTheForceIsTooLargeForThePreload() {
        TwoFlankTeeth teeth = new TwoFlankTeeth(new double[2], new double[2], 1, ALPHA);
        TwoFlankSeat.ClimbsOut out = assertInstanceOf(TwoFlankSeat.ClimbsOut.class, teeth.seat(100, 30));
        assertEquals(100 * Math.tan(ALPHA), out.neededPreloadN(), 1e-12);
        assertInstanceOf(TwoFlankSeat.Seated.class, teeth.seat(100, out.neededPreloadN() * (1 + 1e-12)));
    }

    /** μ·Fz·sin α/(sin α + μ·cos α) over the stiffness along the travel. */
    @Test
    void frictionHoldsItWithinADeadBand() {
        TwoFlankTeeth teeth = new TwoFlankTeeth(new double[20], new double[20], 1e6, ALPHA);
        double expected = 0.3 * 100 * SIN / (SIN + 0.3 * COS) / (40e6 * COS * COS);
        assertEquals(expected, teeth.deadBandM(100, 0.3), 1e-15);
        assertTrue(expected < 1e-6);
        assertEquals(0, teeth.deadBandM(100, 0));
        // Friction that may point either way: moved by the band and a trifle, the springs push back harder than friction.
        double back = teeth.deadBandM(100, 0.3) * 40e6 * COS * COS;
        assertEquals(2 * 0.3 * (100 / (2 * (SIN + 0.3 * COS))) * SIN, back, 1e-9);
    }

    /** Seeds 0 to 499. */
    @Test
    void agreesWithAnActiveSetOnTheTwoEquations() {
        for (long seed = 0; seed < 500; seed++) {
            Random random = new Random(seed);
            int n = 1 + random.nextInt(8);
            double[] left = random.doubles(n, -10, 10).toArray();
            double[] right = random.doubles(n, -10, 10).toArray();
            double alpha = Math.toRadians(10 + 40 * random.nextDouble());
            double preload = 1 + 40 * random.nextDouble();
            double travel = (2 * random.nextDouble() - 1) * 0.9 * preload / Math.tan(alpha);
            ActiveSet other = new ActiveSet(left, right, alpha, travel, preload);
            other.solve();
            TwoFlankSeat.Seated seat = assertInstanceOf(TwoFlankSeat.Seated.class,
                    new TwoFlankTeeth(left, right, 1, alpha).seat(travel, preload));
            assertEquals(other.x, seat.positionM(), 1e-7, "seed " + seed);
            assertEquals(other.z, seat.depthM(), 1e-7, "seed " + seed);
            assertEquals(other.stiffness(), seat.travelStiffnessNPerM(), 1e-7, "seed " + seed);
        }
    }

    @Test
    void refusesAFlatOrAnUprightFlankAndNoPreload() {
        assertThrows(IllegalArgumentException.class, () -> new TwoFlankTeeth(new double[1], new double[1], 1, 0));
        assertThrows(IllegalArgumentException.class, () -> new TwoFlankTeeth(new double[1], new double[1], 1, Math.PI / 2));
        assertThrows(IllegalArgumentException.class,
                () -> new TwoFlankTeeth(new double[1], new double[1], 1, ALPHA).deadBandM(-1, 0.1));
    }
}
