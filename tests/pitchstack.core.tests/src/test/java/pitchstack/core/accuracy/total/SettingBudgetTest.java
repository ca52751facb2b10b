// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.total;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchstack.core.accuracy.budget.BudgetResult;
import pitchstack.core.accuracy.material.Expansion;
import pitchstack.core.accuracy.rack.RackTolerance;
import pitchstack.core.accuracy.teeth.TwoFlankLaw;
import pitchstack.core.accuracy.thermal.Growth;
import pitchstack.core.accuracy.thermal.Temperature;
import pitchstack.core.stack.Setting;

/** Budgets of settings, by hand. */
class SettingBudgetTest {
    private static final double UM = 1e-6;
    private static final double SEAT = 5 * UM * Math.sqrt(40);
    private static final StageAccuracy RACK = Accuracies.stage("rack", 5e-3, 200, 20, 0, Accuracies.alone(10e-6, Accuracies.STEEL),
            Accuracies.alone(0, Accuracies.STEEL), SEAT);
    private static final StageAccuracy PRINTED = Accuracies.stage("printed", 4.9e-3, 80, 20, 0,
            Accuracies.alone(200e-6, Accuracies.PLA), Accuracies.alone(0, Accuracies.PLA), SEAT);
    private static final Setting AT_742 = Setting.of(122, 27);

    private static BudgetResult of(AxisAccuracy axis, Setting setting) {
        return SettingBudget.of(axis, setting).result();
    }

    /**
     * 742.3 mm = 122·5 + 27·4.9: rack 10 ppm of 610 mm, print 200 ppm of 132.3 mm, two seats of 5 µm, one temperature known
     * to ±2 K for all.
     */
    @Test
    void addsUpTheMachineByHand() {
        Temperature shop = new Temperature(20, 2 / Math.sqrt(3));
        BudgetResult result = of(Accuracies.axis(0, shop, RACK, PRINTED), AT_742);
        double rack = 6.10;
        double print = 26.46;
        double warmth = (610e3 * 11.5e-6 + 132.3e3 * 68e-6) * 2 / Math.sqrt(3);
        double expected = Math.sqrt(rack * rack + print * print + 2 * 25 + warmth * warmth);
        assertEquals(expected, result.combined() / UM, 0.01);
        assertEquals(Math.hypot(rack, print), result.repeating() / UM, 0.01);
        assertEquals(1.96 * expected, result.expanded() / UM, 0.05);
        assertEquals(List.of("Base row of rack", "Base row of printed", "Seat of rack", "Seat of printed", "Temperature"),
                result.lines().stream().map(line -> line.contribution().name()).toList());
    }

    /** 25 forward of 5 mm and 25 back of 4.9 mm, 0.1 % each, one bed. */
    @ParameterizedTest
    @CsvSource({"0,175.02", "0.9,55.40", "0.99,17.68", "1,2.50"})
    void partsOfOneSetUpShareTheirScale(double shared, double um) {
        StageAccuracy lower = Accuracies.stage("lower", 5e-3, 60, 10, 25, Accuracies.printed(0.001, 0), Accuracies.printed(0, 0), 0);
        StageAccuracy upper = Accuracies.stage("upper", 4.9e-3, 60, 10, 25, Accuracies.printed(0.001, 0), Accuracies.printed(0, 0), 0);
        assertEquals(um, of(Accuracies.at20(shared, lower, upper), Setting.of(25, -25)).combined() / UM, 0.005);
    }

    /** Base and rider of one scale count together for the index, whatever teeth are engaged. */
    @Test
    void aRiderOfTheSameScaleMakesUpForAPartialOverlap() {
        StageAccuracy stage = Accuracies.stage("s", 5e-3, 30, 20, 0, Accuracies.printed(0.001, 0), Accuracies.printed(0.001, 0), 0);
        assertEquals(25 * 5, of(Accuracies.at20(1, stage), Setting.of(25)).combined() / UM, 1e-6);
        // 5 of 20 rider teeth remain, their mean 7.5 lower: base 17.5, rider 7.5 pitches.
        assertEquals(5 * Math.hypot(17.5, 7.5), of(Accuracies.at20(0, stage), Setting.of(25)).combined() / UM, 1e-6);
    }

    @Test
    void aFitTakesThePlaceOfWhatIsBelieved() {
        double[][] covariances = {{4e-10, -1e-10}, {-1e-10, 9e-10}};
        AxisAccuracy believed = Accuracies.at20(0, RACK, PRINTED);
        AxisAccuracy fitted = new AxisAccuracy(believed.stages(), 0, Optional.of(new AxisAccuracy.Fitted(covariances, 12)), 0,
                believed.temperature(), Optional.empty(), false);
        BudgetResult result = of(fitted, AT_742);
        double variance = 0.61 * 0.61 * 4e-10 + 0.1323 * 0.1323 * 9e-10 - 2 * 0.61 * 0.1323 * 1e-10;
        assertEquals(Math.sqrt(variance), result.repeating(), 1e-12);
        assertEquals(of(believed, AT_742).combined(), of(fitted.unmeasured(), AT_742).combined(), 0);
    }

    @Test
    void aGradeCountsUntilTheRackIsMeasured() {
        RackTolerance tolerance = new RackTolerance(8e-6, 26e-6);
        RowAccuracy graded = new RowAccuracy(new RowLength.Graded(tolerance), 0, 0, Accuracies.STEEL);
        StageAccuracy rack = Accuracies.stage("rack", 5e-3, 200, 20, 0, graded, Accuracies.alone(0, Accuracies.STEEL), 0);
        assertEquals(26 / Math.sqrt(6), of(Accuracies.at20(0, rack), Setting.of(100)).combined() / UM, 1e-9);
        assertEquals(8 / Math.sqrt(3), of(Accuracies.at20(0, rack), Setting.of(1)).combined() / UM, 1e-9);
        assertEquals(0, of(Accuracies.at20(0, rack), Setting.of(0)).combined());
    }

    @Test
    void workOfTheSameMaterialGrowsWithTheRack() {
        Temperature warm = new Temperature(30, 1);
        Expansion steel = new Expansion(11.5e-6, 1e-6);
        StageAccuracy rack = Accuracies.stage("rack", 5e-3, 200, 20, 0, Accuracies.alone(0, steel), Accuracies.alone(0, steel), 0);
        AxisAccuracy without = Accuracies.axis(0, warm, rack);
        AxisAccuracy with = new AxisAccuracy(List.of(rack), 0, Optional.empty(), 0, warm, Optional.of(steel), false);
        assertEquals(0, of(with, Setting.of(100)).combined(), 1e-12);
        // 500 mm: 5.75 µm for 1 K, 5 µm for 10 K of a coefficient known to 1 ppm, 0.5 µm of second order.
        assertEquals(Math.sqrt(5.75 * 5.75 + 25 + 0.25), of(without, Setting.of(100)).combined() / UM, 1e-6);
        AxisAccuracy ring = new AxisAccuracy(List.of(rack), 0, Optional.empty(), 3e-6, warm, Optional.empty(), true);
        assertEquals(3e-6, of(ring, Setting.of(100)).combined(), 1e-15);
    }

    /** Half of the flanks bearing: teeth and seats scatter 1.1676 times as much, and friction holds its band. */
    @Test
    void aLowPreloadAveragesLess() {
        double alpha = Math.toRadians(20);
        RowAccuracy row = Accuracies.printed(0, 30e-6 / Math.sqrt(2));
        StageAccuracy loose = Accuracies.stage("s", 5e-3, 100, 20, 0, row, row, 10e-6);
        TwoFlankLaw law = new TwoFlankLaw(20, 1e6, 30e-6, alpha);
        double half = law.preloadN(0.5);
        StageAccuracy held = new StageAccuracy("s", loose.rows(), 5e-3, row, row, 10e-6,
                Optional.of(new Hold(1e6, alpha, half, 0.3)));
        BudgetResult free = of(Accuracies.at20(0, loose), Setting.of(40));
        BudgetResult partly = of(Accuracies.at20(0, held), Setting.of(40));
        assertEquals(1.167639 * free.repeating(), partly.repeating(), 1e-10);
        double seat = 1.167639 * 10e-6 / Math.sqrt(40);
        assertEquals(Math.hypot(seat, law.at(half, 0.3).deadBandM() / Math.sqrt(3)), partly.varying(), 1e-11);
    }

    @Test
    void aMapTakesThePlaceOfTheTeethAtItsIndicesOnly() {
        RowAccuracy row = Accuracies.printed(0, 30e-6);
        StageAccuracy plain = Accuracies.stage("s", 5e-3, 100, 20, 0, row, row, 0);
        StageAccuracy mapped = new StageAccuracy("s", plain.rows(), 5e-3, row, row, 0, Optional.empty(), Map.of(7, 2e-6));
        assertEquals(2e-6, of(Accuracies.at20(0, mapped), Setting.of(7)).combined(), 1e-15);
        assertEquals(of(Accuracies.at20(0, plain), Setting.of(8)).combined(),
                of(Accuracies.at20(0, mapped), Setting.of(8)).combined());
    }

    /** 610 mm steel and 132.3 mm PLA from 15 to 28 °C, against 742.3 mm of steel work: 132.3 mm of the difference. */
    @Test
    void theChainOfASettingSwingsWithTheSeason() {
        AxisAccuracy axis = new AxisAccuracy(List.of(RACK, PRINTED), 0, Optional.empty(), 0, new Temperature(20, 0),
                Optional.of(Accuracies.STEEL), false);
        Growth swing = Growth.between(GrowthChain.of(axis, AT_742), 15, new Temperature(28, 0));
        assertEquals(0.1323 * (68e-6 - 11.5e-6) * 13, swing.valueM(), 1e-12);
    }

    @Test
    void refusesASettingWhereRowsDoNotMeet() {
        assertThrows(IllegalArgumentException.class, () -> SettingBudget.of(Accuracies.at20(0, RACK), Setting.of(500)));
    }

    @Test
    void findsTheWorstSetting() {
        AxisAccuracy axis = Accuracies.at20(0, RACK, PRINTED);
        // 199 + 19 times 79 + 19 indices are more than are all looked at.
        WorstSetting worst = WorstSetting.of(axis, Setting.of(0, 0), s -> s.index(0) >= 0 && s.index(1) >= 0, (d, of) -> true)
                .orElseThrow();
        double most = 0;
        for (int rack = 0; rack < 200; rack++) {
            for (int printed = 0; printed < 80; printed++) {
                most = Math.max(most, SettingBudget.of(axis, Setting.of(rack, printed)).combined());
            }
        }
        assertEquals(most, worst.combinedM(), 1e-12);
        assertTrue(!worst.exhaustive());
        WorstSetting all = WorstSetting.of(Accuracies.at20(0, PRINTED), Setting.of(0), s -> s.index(0) >= 0, (d, of) -> true)
                .orElseThrow();
        assertTrue(all.exhaustive());
        // Only one tooth engaged at the last index.
        assertEquals(Setting.of(79), all.setting());
        assertEquals(Optional.empty(), WorstSetting.of(axis, Setting.of(0, 0), s -> true, (d, of) -> false));
        assertEquals(Optional.empty(), WorstSetting.of(Accuracies.at20(0, PRINTED), Setting.of(0), s -> true, (d, of) -> d < 9));
    }
}
