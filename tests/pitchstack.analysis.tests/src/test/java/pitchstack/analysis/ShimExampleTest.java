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
import pitchstack.core.plan.Answer.Nearest;
import pitchstack.core.plan.Answer.Reached;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Reason;
import pitchstack.core.stack.Setting;

/**
 * The ram shim, worked by hand. Both joints are of PLA, 68 ppm/K, and 3 K above 20 °C, so both pitches are longer by
 * 204 ppm: 4.000816 mm and 3.98081192 mm. Within ±0.41 mm the two indices must be k and −k, since every other sum of them
 * puts the head some 4 mm away; k steps are k · 0.02000408 mm, and k runs from −20 to 20.
 *
 * <p>The 32 rider teeth of the lower joint cover base teeth 8 + k … 39 + k, which meet the worn teeth 46 and 47 for
 * k ≥ 7. From k = 3 each joint costs 20 + 2 |k − 3| seconds.
 */
class ShimExampleTest {
    /** 0.02000408 mm in femtometres. */
    private static final long STEP = 20_004_080_000L;
    private static final long MICROMETRE = 1_000_000_000L;
    private Example shim;

    @BeforeEach
    void load() throws Exception {
        shim = Example.load("ram-shim");
    }

    @ParameterizedTest
    @CsvSource({
        // target, its position in µm, k, effort in s, worn
        "As built,            0,   0,  52, false",
        "'Winter, cold shop', 60,  3,   0, false",
        "Spring,             20,   1,  48, false",
        "'Summer, hot shop', -40, -2,  60, false",
        "'New die, thin',   -120, -6,  76, false",
        "'New die, thick',   120,  6,  52, false",
        "Reground die,      -300, -15, 112, false",
        "Lowest,            -400, -20, 132, false",
        "Paper shim,         100,  5,  48, false",
        "Heavy blanking,     160,  8,  60, true",
    })
    void reaches(String target, long micrometres, int k, long seconds, boolean worn) {
        PlannedSetting best = ((Reached) shim.plan(target)).best();
        assertEquals(Setting.of(k, -k), best.setting());
        assertEquals(k * STEP, best.position());
        assertEquals(k * STEP - micrometres * MICROMETRE, best.error());
        assertEquals(1000 * seconds, best.effortMs());
        assertEquals(worn ? List.of(0) : List.of(), best.wornStages());
    }

    /** 0.05 mm lies between k = 2, 0.04000816 mm, and k = 3, 0.06001224 mm, and 5 µm reach neither. */
    @Test
    void findsATargetBetweenTwoSteps() {
        Nearest nearest = (Nearest) shim.plan("Between");
        assertEquals(Reason.BETWEEN_STEPS, nearest.reason());
        assertEquals(Optional.of(2 * STEP), nearest.below().map(PlannedSetting::position));
        assertEquals(Optional.of(3 * STEP), nearest.above().map(PlannedSetting::position));
    }

    @Test
    void endsAboveATargetThatIsTooLow() {
        Nearest nearest = (Nearest) shim.plan("Too low");
        assertEquals(Reason.BEYOND_TRAVEL, nearest.reason());
        assertFalse(nearest.below().isPresent());
        assertEquals(Optional.of(Setting.of(-20, 20)), nearest.above().map(PlannedSetting::setting));
    }
}
