// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import pitchstack.core.plan.Answer.Reached;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.RotaryScale;
import pitchstack.core.units.Scale;

/** Moves by a difference on a press head of 4.00 and 3.98 mm stages: one forward and one back is 20 µm. */
class RelativeMoveTest {
    private static final long UM = 1_000_000_000L;
    private static final long MM = 1000 * UM;
    private static final EffortCost COST = new EffortCost(4000, 1000);
    /** Base tooth 12 of the upper stage is barred; under a rider of 10 that start at 10 it bars the indices −7 to 2. */
    private static final List<WornRange> BARRED = List.of(new WornRange(new ToothSpan(12, 12), Wear.BARRED));

    @Test
    void raisesTheRamByTwentyMicrometresFromWhereItStands() {
        AxisSpec axis = shim(List.of());
        Setting from = Setting.of(2, -3);
        // 2 · 4 mm − 3 · 3.98 mm + 20 µm = −3.92 mm
        assertEquals(-3920 * UM, axis.positionFrom(from, 20 * UM));
        assertEquals(Setting.of(3, -4), plan(axis, from, 20 * UM).setting());
        assertEquals(Setting.of(1, -2), plan(axis, from, -20 * UM).setting());
    }

    @Test
    void isExactFromASettingOverBarredTeeth() {
        AxisSpec axis = shim(BARRED);
        Setting barred = Setting.of(0, 0);
        // The upper stage may stand at −8 or below, or at 3 or above: 20 µm is (4000 m + 3980 n) µm only with n = −1 + 200 z,
        // so a step of 20 µm is out of reach; −60 µm is (−3, 3).
        assertEquals(Setting.of(-3, 3), plan(axis, barred, -60 * UM).setting());
        assertEquals(0, plan(axis, barred, -60 * UM).error());
        Answer answer = Planner.of(axis).plan(new PlanRequest(axis.positionFrom(barred, 20 * UM), 0, barred,
                WornPolicy.AVOID, 0));
        assertEquals(Reason.UNUSABLE_TEETH, ((Answer.Nearest) answer).reason());
    }

    @Test
    void isExactToOneFemtometre() {
        AxisSpec axis = shim(List.of());
        Setting from = Setting.of(2, -3);
        Planner planner = Planner.of(axis);
        long oneMore = axis.positionFrom(from, 20 * UM + 1);
        assertEquals(-1, ((Reached) planner.plan(new PlanRequest(oneMore, 1, from, WornPolicy.AVOID, 0))).best().error());
        assertEquals(Reason.BETWEEN_STEPS, ((Answer.Nearest) planner.plan(new PlanRequest(oneMore, 0, from,
                WornPolicy.AVOID, 0))).reason());
    }

    @Test
    void goesOverZeroOnARotaryAxis() {
        long degree = 3600;
        AxisSpec axis = axis(new RotaryScale(RotaryScale.ARC_SECONDS), 10 * degree, 9 * degree, List.of());
        // −10° + 9° = 359°; two degrees on is 1°, which is one forward and one back of where all stands at 0.
        assertEquals(degree, axis.positionFrom(Setting.of(-1, 1), 2 * degree));
        assertEquals(Setting.of(1, -1), plan(axis, Setting.of(-1, 1), 2 * degree).setting());
        assertEquals(359 * degree, axis.positionFrom(Setting.of(0, 0), -degree));
        assertEquals(Math.floorMod(Long.MAX_VALUE, 360 * degree), axis.positionFrom(Setting.of(0, 0), Long.MAX_VALUE));
    }

    @Test
    void refusesADifferenceThatDoesNotFit() {
        AxisSpec axis = shim(List.of());
        assertThrows(ArithmeticException.class, () -> axis.positionFrom(Setting.of(1, 0), Long.MAX_VALUE));
    }

    private static PlannedSetting plan(AxisSpec axis, Setting from, long difference) {
        PlanRequest request = new PlanRequest(axis.positionFrom(from, difference), 0, from, WornPolicy.AVOID, 0);
        return ((Reached) Planner.of(axis).plan(request)).best();
    }

    private static AxisSpec shim(List<WornRange> upperWorn) {
        return axis(new LinearScale(LengthUnit.MM), 4 * MM, 3980 * UM, upperWorn);
    }

    private static AxisSpec axis(Scale scale, long lower, long upper, List<WornRange> upperWorn) {
        return new AxisSpec("Ram", scale, List.of(stage("Lower", lower, List.of()), stage("Upper", upper, upperWorn)), 0,
                OptionalLong.empty(), OptionalLong.empty(), List.of(), 0, OptionalLong.empty());
    }

    /** 30 base teeth under 10 that start at the tenth, 5 engaged at least: indices −15 to 15. */
    private static StageSpec stage(String name, long pitch, List<WornRange> worn) {
        return new StageSpec(name, Source.PRINTED, pitch, pitch,
                new RowPair(new RowSpec(30, worn), new RowSpec(10, List.of()), 10, 5), COST);
    }
}
