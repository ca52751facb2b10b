// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.Answer.Nearest;
import pitchstack.core.plan.Answer.Reached;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Reason;
import pitchstack.core.stack.Setting;

/**
 * The cross-cut fence, worked by hand. In hundredths of an inch a position is x = 25 a + 24 b with the rack at a in
 * −12 … 396 and the fine row at b in −12 … 12. Modulo 25 that is −b, and 25 values of b in a row hit each remainder
 * once: b is the one of them with b ≡ −x, and a = (x − 24 b) / 25. So every hundredth has one setting.
 *
 * <p>The 24 rider teeth cover rack teeth a … a + 23, which meet the worn teeth 100 and 101 for a = 77 … 101.
 * The effort from [48, 0] is 12 + |a − 48| / 2 seconds if the rack moves and 6 + 1.5 |b| if the fine row does.
 */
class FenceExampleTest {
    /** 0.001 in in femtometres. */
    private static final long THOU = 25_400_000_000L;
    private static final long HUNDREDTH = 10 * THOU;
    private static final int TRAVEL = 9600;
    private static final int WORN_SETTINGS = 25 * 25;
    private Example fence;

    @BeforeEach
    void load() throws Exception {
        fence = Example.load("cross-cut-fence");
    }

    @ParameterizedTest
    @CsvSource({
        // target, rack, fine row, error in thou, effort in s, worn
        "Drawer side,   48,   0, 0,   0.0, false", // 1200 = 25 · 48, where it stands
        "Toe kick,      14,   0, 0,  29.0, false", //  350 = 25 · 14;           12 + 34/2
        "Bottom rail,   40,  -1, 0,  23.5, false", //  976 = 25 · 40 − 24;      12 + 8/2 + 6 + 1.5
        "Door rail,     62,  12, 5,  43.0, false", // 1838 = 25 · 62 + 24 · 12; 12 + 14/2 + 6 + 18; 1837 needs a = 85
        "Shelf,         96,   0, 0,  36.0, true",  // 2400 = 25 · 96;           12 + 48/2
        "Stile,        120,   0, 0,  48.0, false", // 3000 = 25 · 120;          12 + 72/2
        "Cabinet side, 138,   0, 0,  57.0, false", // 3450 = 25 · 138;          12 + 90/2
        "Face frame,   139,  12, 5,  81.5, false", // 3763 = 25 · 139 + 24 · 12; 12 + 91/2 + 6 + 18; 3762 costs 93
        "Panel,        199,  -8, 0, 105.5, false", // 4783 = 25 · 199 − 24 · 8; 12 + 151/2 + 6 + 12
        "Counter,      288,   0, 0, 132.0, false", // 7200 = 25 · 288;          12 + 240/2
        "Long rail,    382,   0, 0, 179.0, false", // 9550 = 25 · 382;          12 + 334/2
    })
    void reaches(String target, int rack, int fine, int errorThou, double seconds, boolean worn) {
        PlannedSetting best = ((Reached) fence.plan(target)).best();
        assertEquals(Setting.of(rack, fine), best.setting());
        assertEquals(errorThou * THOU, best.error());
        assertEquals(Math.round(1000 * seconds), best.effortMs());
        assertEquals(worn ? List.of(0) : List.of(), best.wornStages());
    }

    /** 37.625 in lies between 3762 = 25 · 162 − 24 · 12 and 3763 = 25 · 139 + 24 · 12 hundredths. */
    @Test
    void findsTheTightFaceFrameBetweenTwoSteps() {
        Nearest nearest = (Nearest) fence.plan("Face frame, tight");
        assertEquals(Reason.BETWEEN_STEPS, nearest.reason());
        assertEquals(Optional.of(Setting.of(162, -12)), nearest.below().map(PlannedSetting::setting));
        assertEquals(Optional.of(Setting.of(139, 12)), nearest.above().map(PlannedSetting::setting));
        assertEquals(Optional.of(-5 * THOU), nearest.below().map(PlannedSetting::error));
    }

    /** The stop is at 96 in = 25 · 384 hundredths. */
    @Test
    void endsBelowTheBeam() {
        Nearest nearest = (Nearest) fence.plan("Beam");
        assertEquals(Reason.BEYOND_TRAVEL, nearest.reason());
        assertEquals(Optional.of(Setting.of(384, 0)), nearest.below().map(PlannedSetting::setting));
        assertFalse(nearest.above().isPresent());
    }

    /** 25 rack indices are worn, each with 25 of the fine row, and no two settings share a position. */
    @Test
    void reachesEveryHundredthOfItsTravelAndNoMoreThanNeedBeOverWornTeeth() {
        int worn = 0;
        for (int x = 0; x <= TRAVEL; x++) {
            Answer answer = fence.plan(x * HUNDREDTH, 0);
            PlannedSetting best = ((Reached) answer).best();
            int b = Math.floorMod(-x + 12, 25) - 12;
            assertEquals(Setting.of((x - 24 * b) / 25, b), best.setting());
            worn += best.wornStages().size();
        }
        assertEquals(WORN_SETTINGS, worn);
    }
}
