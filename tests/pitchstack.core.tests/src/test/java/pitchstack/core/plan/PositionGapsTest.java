// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pitchstack.core.Stacks.LINEAR;
import static pitchstack.core.Stacks.MM;
import static pitchstack.core.Stacks.axis;
import static pitchstack.core.Stacks.stage;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchstack.core.units.Pitch;

/**
 * Gaps between reachable positions within one coarse pitch. Three-gap theorem (Steinhaus' conjecture; Sós, Surányi and
 * Świerczkowski, 1957–58): the points k·α modulo 1 have gaps of at most three lengths, and of three the longest is the
 * sum of the others. Values from the project's own computation with exact fractions, kept with its check values.
 */
final class PositionGapsTest {
    /** Gaps as "length mm x count", shortest first, lengths to a nanometre. */
    @ParameterizedTest(name = "{0} on {1}, {2} fine indices")
    @CsvSource({
        "4.9, 5, 2, 0.1x1 4.9x1",
        "4.9, 5, 10, 0.1x9 4.1x1",
        "4.9, 5, 25, 0.1x24 2.6x1",
        "4.9, 5, 49, 0.1x48 0.2x1",
        "4.9, 5, 50, 0.1x50",
        "4.9, 5, 60, 0.1x50",
        "2.5, 2.54, 63, 0.04x62 0.06x1",
        "2.5, 2.54, 100, 0.02x73 0.04x27",
        "2.5, 2.54, 127, 0.02x127",
        "3, module 1, 10, 0.141593x9 1.867259x1",
        "3, module 1, 22, 0.141593x21 0.168147x1",
        "3, module 1, 23, 0.026554x1 0.141593x22",
        "3, module 1, 30, 0.026554x8 0.115038x7 0.141593x15",
        "3, module 1, 100, 0.026554x78 0.035376x11 0.061930x11"})
    void areThoseOfTheThreeGapTheorem(String fine, String coarse, int indices, String expected) {
        Map<Long, Integer> gaps = gaps(fine, coarse, indices);
        Map<Long, Integer> toNanometres = new TreeMap<>();
        gaps.forEach((gap, count) -> toNanometres.merge(Math.round(gap / 1e6), count, Integer::sum));
        Map<Long, Integer> wanted = new TreeMap<>();
        for (String part : expected.split(" ")) {
            wanted.put(Math.round(Double.parseDouble(part.split("x")[0]) * 1e6), Integer.parseInt(part.split("x")[1]));
        }
        assertEquals(wanted, toNanometres);
    }

    @Test
    void haveAtMostThreeLengthsAndOfThreeTheLongestIsTheSumOfTheOthers() {
        for (int indices = 2; indices <= 150; indices++) {
            List<Long> lengths = List.copyOf(gaps("3", "module 1", indices).keySet());
            assertTrue(lengths.size() <= 3, "at " + indices + ": " + lengths);
            if (lengths.size() == 3) {
                assertEquals(lengths.get(0) + lengths.get(1), lengths.get(2), "at " + indices);
            }
        }
    }

    /** Counted over one coarse pitch in the middle of a coarse row long enough to reach it with every fine index. */
    private static Map<Long, Integer> gaps(String fine, String coarse, int indices) {
        long pitch = Pitch.parse(coarse).units(LINEAR);
        Planner planner = Planner.of(axis(stage("coarse", pitch, -2 * indices, 2 * indices),
                stage("fine", Pitch.parse(fine).units(LINEAR), 0, indices - 1)));
        List<Long> positions = Plans.positions(planner, 0, pitch);
        assertEquals(0, positions.get(0));
        assertEquals(pitch, positions.get(positions.size() - 1));
        Map<Long, Integer> gaps = new TreeMap<>();
        for (int i = 1; i < positions.size(); i++) {
            gaps.merge(positions.get(i) - positions.get(i - 1), 1, Integer::sum);
        }
        return gaps;
    }

    /** 50 and 49 tenths of a millimetre with |a|, |b| ≤ B: the run about zero that has no gap, and the largest gap. */
    @ParameterizedTest(name = "bound {0}")
    @CsvSource({"1, 1, 9", "5, 5, 121", "10, 10, 441", "24, 24, 2401", "25, 123, 2599", "49, 2499, 0", "50, 2598, 0"})
    void leaveTheKnownRunAboutZero(int bound, int run, int distinct) {
        long tenth = MM / 10;
        Planner planner = Planner.of(axis(stage("lower", 50 * tenth, -bound, bound),
                stage("upper", 49 * tenth, -bound, bound)));
        for (int k = -run; k <= run; k++) {
            assertTrue(Plans.isReached(planner, k * tenth), "0.1 mm times " + k);
        }
        assertTrue(!Plans.isReached(planner, (run + 1) * tenth));
        assertTrue(!Plans.isReached(planner, -(run + 1) * tenth));
        List<Long> positions = Plans.positions(planner, -99 * bound * tenth, 99 * bound * tenth);
        long largest = 0;
        for (int i = 1; i < positions.size(); i++) {
            largest = Math.max(largest, positions.get(i) - positions.get(i - 1));
        }
        assertEquals(49 * tenth, largest);
        if (distinct > 0) {
            assertEquals(distinct, positions.size());
        }
    }

    /** Pitches 5, 4.5 and 4.95 with bounds 12, 5 and 5: every 0.05 mm to ±27.15 mm, 2689 positions in all. */
    @Test
    void closeWithAMiddleStage() {
        long unit = MM / 20;
        Planner planner = Planner.of(axis(stage("a", 100 * unit, -12, 12), stage("b", 90 * unit, -5, 5),
                stage("c", 99 * unit, -5, 5)));
        for (int k = -543; k <= 543; k++) {
            assertTrue(Plans.isReached(planner, k * unit), "0.05 mm times " + k);
        }
        assertTrue(!Plans.isReached(planner, 544 * unit));
        assertEquals(2689, Plans.positions(planner, -3000 * unit, 3000 * unit).size());
    }
}
