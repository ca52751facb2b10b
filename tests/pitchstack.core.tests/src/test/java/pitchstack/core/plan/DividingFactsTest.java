// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pitchstack.core.Stacks.axis;
import static pitchstack.core.Stacks.stage;
import static pitchstack.core.plan.Plans.assertPlanned;
import static pitchstack.core.plan.Plans.reached;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.units.RotaryScale;

/** Rings, sectors and the dividing head. One arc second is one count unless a test says otherwise. */
final class DividingFactsTest {
    private static final RotaryScale SECONDS = new RotaryScale(RotaryScale.ARC_SECONDS);
    private static final long DEGREE = 3600;
    private static final long MINUTE = 60;

    /** Sector rings of 1°, 1°01' and 1°00'01": 12°34'56" in 58 teeth; the digits balanced one by one cost 71. */
    @Test
    void setsSectorRingsWithTheFewestTeeth() {
        AxisSpec sectors = axis(SECONDS, stage("1°", DEGREE, -100, 100), stage("1°01'", DEGREE + MINUTE, -100, 100),
                stage("1°00'01\"", DEGREE + 1, -100, 100));
        long target = SECONDS.parse("12°34'56\"");
        Answer.Reached answer = reached(Planner.of(sectors).plan(Plans.request(sectors, target, 0, 200)));
        assertPlanned(List.of(-19, 35, -4), 58, 0, answer.best());
        PlannedSetting balanced = answer.alternatives().stream()
                .filter(s -> s.setting().equals(Setting.of(42, -25, -4))).findFirst().orElseThrow();
        assertEquals(71, balanced.effortMs());
    }

    /**
     * Chinese remainder theorem on full rings of 128, 81 and 125 teeth, whose product is the arc seconds in a turn: each
     * second is reached in exactly one way.
     */
    @ParameterizedTest(name = "{0}\"")
    @CsvSource({"1, 69, 49, 107", "60, 44, 24, 45", "3600, 80, 63, 75", "45296, 48, 23, 47"})
    void setsCoprimeRingsInTheOneWayThereIs(long seconds, int a, int b, int c) {
        AxisSpec rings = axis(SECONDS, ring(128, 0, 127), ring(81, 0, 80), ring(125, 0, 124));
        Answer.Reached answer = reached(Planner.of(rings).plan(Plans.request(rings, seconds, 0, 3)));
        assertEquals(List.of(a, b, c), answer.best().setting().toList());
        assertEquals(List.of(), answer.alternatives());
    }

    @Test
    void setsCoprimeRingsTheShortWayRound() {
        AxisSpec rings = axis(SECONDS, ring(128, -64, 63), ring(81, -40, 40), ring(125, -62, 62));
        Answer.Reached answer = reached(Planner.of(rings).plan(Plans.request(rings, 1, 0, 3)));
        assertPlanned(List.of(-59, -32, -18), 59 + 32 + 18, 0, answer.best());
        assertEquals(List.of(), answer.alternatives());
    }

    /** Full rings of coprime numbers of teeth divide a turn into their product: 1' with 25, 27 and 32 teeth. */
    @Test
    void reachesEveryMinuteWithThreeCoprimeRings() {
        Planner planner = Planner.of(axis(SECONDS, ring(25, 0, 24), ring(27, 0, 26), ring(32, 0, 31)));
        for (long minute = 0; minute < 360 * 60; minute++) {
            assertTrue(Plans.isReached(planner, minute * MINUTE), "minute " + minute);
        }
        assertFalse(Plans.isReached(planner, MINUTE / 2));
    }

    /** Two full rings divide a turn into the least common multiple of their teeth. */
    @ParameterizedTest(name = "{0} and {1} teeth, {2} parts")
    @CsvSource({"32, 45, 1440", "25, 144, 3600", "32, 675, 21600"})
    void dividesATurnIntoTheLeastCommonMultiple(int first, int second, long parts) {
        AxisSpec rings = axis(SECONDS, ring(first, 0, first - 1), ring(second, 0, second - 1));
        Planner planner = Planner.of(rings);
        long part = SECONDS.turn() / parts;
        for (int i = 0; i < parts; i++) {
            assertTrue(Plans.isReached(planner, i * part), "part " + i);
        }
        List<Long> positions = Plans.positions(planner, 0, 100 * part);
        assertEquals(101, positions.size(), "and nothing between");
    }

    /**
     * Compound indexing on a 40:1 head, n divisions by 40/n = ±a/A ± b/B turns of the crank: identities of fractions,
     * classic pairs of the handbooks. A setting of whole circles, forward on the first.
     */
    @ParameterizedTest(name = "40/{0} = {1}/{2} {3}/{4}")
    @CsvSource({"69, 21, 23, -11, 33", "77, 9, 21, 3, 33", "91, 6, 39, 14, 49", "51, 10, 15, 2, 17",
        "99, 15, 27, -5, 33", "93, 3, 31, 11, 33", "87, 23, 29, -11, 33"})
    void findsTheClassicPairsOfCompoundIndexing(long divisions, int a, int first, int b, int second) {
        RotaryScale scale = RotaryScale.dividing(List.of(divisions, (long) first, (long) second));
        AxisSpec crank = axis(scale, stage("first", scale.turn() / first, 0, first - 1),
                stage("second", scale.turn() / second, 1 - second, second - 1));
        long target = 40 * (scale.turn() / divisions);
        Answer.Reached answer = reached(Planner.of(crank).plan(Plans.request(crank, target, 0, 100)));
        List<Setting> settings = Stream.concat(Stream.of(answer.best()), answer.alternatives().stream())
                .map(PlannedSetting::setting).toList();
        assertTrue(settings.contains(Setting.of(a, b)), () -> "among " + settings);
        assertTrue(answer.best().effortMs() <= a + Math.abs(b));
    }

    /**
     * Decimal parts of a turn by two circles, with their errors in millionths of a turn: Machinery's Handbook, 27th
     * edition, page 1995, which rounds the last but one to 30. The last is 1/127 of the work, 40/127 of a turn, by the
     * circles 37 and 49.
     */
    @ParameterizedTest(name = "{0}/{1} = {2}/{3} {4}/{5}")
    @CsvSource({"1920, 10000, 7, 41, 1, 47, 8.3", "1980, 10000, 2, 29, 4, 31, -2.2",
        "2020, 10000, 23, 41, -14, 39, 1.3", "2250, 10000, 2, 16, 2, 20, 0", "2300, 10000, 7, 37, 2, 49, 5.5",
        "2010, 10000, 11, 39, -3, 37, -29.8", "40, 127, 26, 37, -19, 49, -13.03"})
    void findsTheHandbooksDecimalsWithTheirErrors(long part, long of, int a, int first, int b, int second,
            double millionths) {
        RotaryScale scale = RotaryScale.dividing(List.of(of, (long) first, (long) second));
        AxisSpec crank = axis(scale, stage("first", scale.turn() / first, 0, first - 1),
                stage("second", scale.turn() / second, 1 - second, second - 1));
        long target = scale.turn() / of * part;
        long tolerance = scale.turn() / 1_000_000 * 31;
        Answer.Reached answer = reached(Planner.of(crank).plan(Plans.request(crank, target, tolerance, 100)));
        PlannedSetting named = Stream.concat(Stream.of(answer.best()), answer.alternatives().stream())
                .filter(s -> s.setting().equals(Setting.of(a, b))).findFirst().orElseThrow();
        assertEquals(millionths, named.error() * 1e6 / scale.turn(), 0.06);
    }

    /** A 40:1 head moves the work 9° a turn, and two holes of an 18-hole circle 1°: Machinery's Handbook, 1916. */
    @ParameterizedTest(name = "{0}°")
    @CsvSource({"1, 0, 2", "35, 3, 16"})
    void setsDegreesOnAFortyToOneHead(long degrees, int turns, int holes) {
        AxisSpec head = axis(SECONDS, stage("turns", 9 * DEGREE, 0, 39), stage("holes", DEGREE / 2, 0, 17));
        Answer.Reached answer = reached(Planner.of(head).plan(Plans.request(head, degrees * DEGREE, 0, 1)));
        assertEquals(List.of(turns, holes), answer.best().setting().toList());
        assertEquals(List.of(), answer.alternatives());
    }

    private static StageSpec ring(int teeth, int first, int last) {
        return stage(teeth + " teeth", RotaryScale.ARC_SECONDS / teeth, first, last);
    }
}
