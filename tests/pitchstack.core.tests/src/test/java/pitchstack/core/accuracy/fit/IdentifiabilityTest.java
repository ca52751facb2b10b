// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pitchstack.core.Stacks;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.Wear;

/** What a run cannot tell, and the settings that would. */
class IdentifiabilityTest {
    private static final TellingSettings TELLING =
            new TellingSettings(MadeUpDevice.AXIS, MadeUpDevice.HOME, MadeUpDevice.STAGES);

    private static Reading at(int... indices) {
        return new Reading(Setting.of(indices), 0, Direction.UNKNOWN, 1e-6, 20);
    }

    private static Identifiability of(Reading... readings) {
        return Identifiability.of(MadeUpDevice.STAGES, Arrays.asList(readings));
    }

    @Test
    void namesStagesThatNeverMoved() {
        Identifiability told = of(at(0, 3, 0), at(10, 3, 0), at(50, 3, 0));
        assertEquals(List.of(1, 2), told.unmoved());
        assertTrue(told.tied().isEmpty());
    }

    @Test
    void namesAPairThatAlwaysMovedTogether() {
        Identifiability told = of(at(0, 0, 0), at(10, 1, -1), at(30, 5, -5), at(0, 7, -7));
        assertEquals(List.of(List.of(1, 2)), told.tied());
        assertTrue(told.unmoved().isEmpty());
    }

    @Test
    void namesThreeStagesTiedByTooFewSettings() {
        assertEquals(List.of(List.of(0, 1, 2)), of(at(0, 0, 0), at(1, 2, 3), at(5, -3, 2)).tied());
    }

    @Test
    void namesAStageThatCannotBeToldFromTheReversal() {
        List<Reading> readings = new ArrayList<>();
        for (int rack : new int[] {0, 10, 40}) {
            readings.add(new Reading(Setting.of(rack, rack % 20, 5), 0, Direction.FORWARD, 1e-6, 20));
            readings.add(new Reading(Setting.of(rack, rack % 20, -5), 0, Direction.BACK, 1e-6, 20));
        }
        assertEquals(List.of(List.of(2)), Identifiability.of(MadeUpDevice.STAGES, readings).tied());
    }

    @Test
    void isContentWithOneStageAfterTheOther() {
        assertTrue(of(at(0, 0, 0), at(10, 0, 0), at(0, 5, 0), at(0, 0, 5)).isComplete());
    }

    @Test
    void fittingSaysWhatCannotBeTold() {
        FitOutcome outcome = PitchFit.of(MadeUpDevice.STAGES, List.of(at(0, 0, 0), at(10, 1, -1), at(30, 5, -5),
                at(0, 7, -7)), FitOptions.USUAL);
        assertEquals(List.of(List.of(1, 2)), assertInstanceOf(FitOutcome.Undetermined.class, outcome).what().tied());
    }

    /** One setting more tells a pair apart, and it moves one of the two alone, all the way. */
    @Test
    void proposesOneSettingForAPairThatMovedTogether() {
        List<Setting> added = TELLING.beside(List.of(Setting.of(0, 0, 0), Setting.of(10, 1, -1), Setting.of(30, 5, -5),
                Setting.of(0, 7, -7)));
        assertEquals(1, added.size());
        Setting one = added.get(0);
        assertTrue(List.of(Setting.of(0, 10, 0), Setting.of(0, -10, 0), Setting.of(0, 0, 10), Setting.of(0, 0, -10))
                .contains(one), one.toString());
    }

    @Test
    void proposesNothingWhereAllIsTold() {
        assertEquals(List.of(), TELLING.beside(List.of(Setting.of(0, 0, 0), Setting.of(10, 0, 0), Setting.of(0, 5, 0),
                Setting.of(0, 0, 5))));
    }

    /** Whatever a run of a few settings by chance says, what is proposed completes it; seeds 0 to 199. */
    @Test
    void whatIsProposedCompletesAnyRun() {
        for (long seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            List<Setting> settings = new ArrayList<>();
            for (int i = random.nextInt(4); i >= 0; i--) {
                int fine = random.nextInt(21) - 10;
                settings.add(Setting.of(random.nextInt(200), fine, random.nextBoolean() ? -fine : fine));
            }
            List<Setting> added = TELLING.beside(settings);
            settings.addAll(added);
            assertTrue(of(settings.stream().map(s -> at(s.toArray())).toArray(Reading[]::new)).isComplete(), "seed " + seed);
            assertTrue(added.size() <= 4, "seed " + seed);
        }
    }

    @Test
    void proposesOnlyWhatIsAllowed() {
        AxisSpec worn = Stacks.withStage(MadeUpDevice.AXIS, 1, Stacks.with(MadeUpDevice.AXIS.stages().get(1),
                new RowPair(Stacks.row(21, Stacks.mark(18, 20, Wear.BARRED)), Stacks.row(1), 10, 1)));
        AxisSpec narrow = Stacks.withLimits(Stacks.withStops(worn, -40 * Stacks.MM, 120 * Stacks.MM),
                new ShiftLimit(1, 2, 45 * Stacks.MM));
        for (Setting setting : new TellingSettings(narrow, MadeUpDevice.HOME, MadeUpDevice.STAGES).beside(List.of())) {
            // Teeth 18 to 20 are indices 8 to 10; 120 mm is 47 rack teeth; 45 mm is 9 teeth of 4.9 mm.
            assertTrue(setting.index(0) <= 47 && setting.index(1) <= 7 && Math.abs(setting.index(2)) <= 9
                    && setting.index(1) >= -8, setting.toString());
        }
        assertEquals(Setting.of(47, 0, 0), new Allowed(narrow).towards(MadeUpDevice.HOME, 0, 200));
        assertEquals(Setting.of(0, 7, 0), new Allowed(narrow).towards(MadeUpDevice.HOME, 1, 10));
        assertEquals(Setting.of(0, -8, 0), new Allowed(narrow).towards(MadeUpDevice.HOME, 1, -10));
        assertEquals(Setting.of(0, 0, 9), new Allowed(narrow).towards(MadeUpDevice.HOME, 2, 10));
    }
}
