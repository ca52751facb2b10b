// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pitchstack.core.Stacks.MM;
import static pitchstack.core.Stacks.axis;
import static pitchstack.core.Stacks.stage;
import static pitchstack.core.Stacks.withDatum;
import static pitchstack.core.plan.Plans.assertPlanned;
import static pitchstack.core.plan.Plans.plan;
import static pitchstack.core.plan.Plans.reached;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;

/** What number theory and the handbooks say of two and more pitches. */
final class WholeNumberFactsTest {
    private static final long TENTH = MM / 10;
    private static final AxisSpec PAIR = axis(stage("lower", 50 * TENTH, -200, 200),
            stage("upper", 49 * TENTH, -200, 200));

    /** Common practice, no source. */
    @Test
    void oneFiveForwardAndOneFourPointNineBackAdvancesATenth() {
        assertEquals(TENTH, PAIR.position(Setting.of(1, -1)));
        assertPlanned(List.of(1, -1), 2, 0, reached(plan(PAIR, TENTH, 0)).best());
        assertPlanned(List.of(3, -3), 6, 0, reached(plan(PAIR, 3 * TENTH, 0)).best());
    }

    /**
     * Least |a| + |b| with 5a + 4.9b: extended Euclid gives one solution, all others lie (49, −50) apart, and the cost is
     * convex along them. The project's check values, and the two neighbours on that line by hand.
     */
    @ParameterizedTest(name = "{0} mm")
    @CsvSource({"0.1, 1, -1, 2", "1.0, 10, -10, 20", "2.4, 24, -24, 48", "2.5, -24, 25, 49", "2.6, -23, 24, 47",
        "4.9, 0, 1, 1", "5.1, 2, -1, 3", "9.9, 1, 1, 2", "12.3, 25, -23, 48", "13.7, -10, 13, 23", "50.0, 10, 0, 10",
        "123.4, 9, 16, 25", "742.3, 122, 27, 149"})
    void countsTheFewestTeeth(String millimetres, int a, int b, int teeth) {
        long target = Math.round(Double.parseDouble(millimetres) * 10) * TENTH;
        Answer.Reached answer = reached(Planner.of(PAIR).plan(Plans.request(PAIR, target, 0, 2)));
        assertPlanned(List.of(a, b), teeth, 0, answer.best());
        for (PlannedSetting other : answer.alternatives()) {
            int t = (other.setting().index(0) - a) / 49;
            assertEquals(List.of(a + 49 * t, b - 50 * t), other.setting().toList());
            assertEquals(Math.abs(a + 49 * t) + Math.abs(b - 50 * t), other.effortMs());
        }
    }

    @Test
    void prefersTheShorterOfTwoKnownWaysTo742Point3() {
        Answer.Reached answer = reached(Planner.of(PAIR).plan(Plans.request(PAIR, 7423 * TENTH, 0, 9)));
        PlannedSetting longer = answer.alternatives().stream()
                .filter(s -> s.setting().equals(Setting.of(171, -23))).findFirst().orElseThrow();
        assertEquals(194, longer.effortMs());
    }

    /** Extended Euclid: 127·(−62) + 125·63 = 1 and, one period on, 127·63 − 125·64 = 1. */
    @Test
    void findsTheSmallestStepOfAnInchAndAMetricRow() {
        long unit = MM / 50;
        AxisSpec mixed = axis(stage("0.1 in", 127 * unit, -130, 130), stage("2.5 mm", 125 * unit, -130, 130));
        Answer.Reached answer = reached(Planner.of(mixed).plan(Plans.request(mixed, unit, 0, 1)));
        assertPlanned(List.of(-62, 63), 125, 0, answer.best());
        assertPlanned(List.of(63, -64), 127, 0, answer.alternatives().get(0));
    }

    /**
     * Frobenius number of 50 and 49 (Sylvester 1882): with forward teeth only, 50·49 − 50 − 49 = 2351 is the last whole
     * number out of reach, and 49·48/2 = 1176 are out of reach in all.
     */
    @Test
    void leavesTheFrobeniusNumberOut() {
        Planner planner = Planner.of(axis(stage("lower", 50 * TENTH, 0, 60), stage("upper", 49 * TENTH, 0, 60)));
        int out = 0;
        for (int k = 0; k <= 2351; k++) {
            out += Plans.isReached(planner, k * TENTH) ? 0 : 1;
        }
        assertEquals(1176, out);
        assertFalse(Plans.isReached(planner, 2351 * TENTH));
        for (int k = 2352; k < 2500; k++) {
            assertTrue(Plans.isReached(planner, k * TENTH), "0.1 mm times " + k);
        }
    }

    /**
     * Gauge blocks of the 81-piece inch set: .1001–.1009, .101–.149, .050–.950 and 1–4, a stage for each series and the
     * .1 of the first two blocks in the datum. 3.9762 = .1002 + .126 + .750 + 3.000, as in a gauge-block use guide; 4.3301
     * (a 5 in sine bar at 60°) = .1001 + .130 + .100 + 4.000.
     */
    @ParameterizedTest
    @CsvSource({"39762, 2, 26, 15, 3", "43301, 1, 30, 2, 4"})
    void choosesTheGaugeBlocksOfTheHandbook(long tenThousandths, int first, int second, int third, int fourth) {
        AxisSpec blocks = withDatum(axis(stage(".0001", 1, 1, 9), stage(".001", 10, 1, 49),
                stage(".050", 500, 0, 19), stage("1", 10_000, 0, 4)), 2000);
        Answer.Reached answer = reached(Planner.of(blocks).plan(Plans.request(blocks, tenThousandths, 0, 5)));
        assertEquals(List.of(first, second, third, fourth), answer.best().setting().toList());
        assertEquals(List.of(), answer.alternatives(), "the four series leave no other choice");
    }
}
