// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.total;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import pitchstack.core.accuracy.budget.BudgetResult;
import pitchstack.core.stack.Setting;

/**
 * Common practice, without a source: a printed 5/4.9 mm pair read about 2 µm short after one step of 0.1 mm and 3.4 µm after
 * three, and came back to zero within 2.5 µm. With scatter that is believable of a print, such figures must be ordinary:
 * neither rarely so large nor rarely so small.
 *
 * <p>Believed: flanks of either row off by 20 to 40 µm, 20 teeth engaged, scale known to 0.2 % and shared at 0.99 by parts of
 * one bed, a flank that seats 5 µm otherwise from time to time.
 */
class CommonPracticeTest {
    private static final double UM = 1e-6;
    private static final double[] SCATTERS_UM = {20, 30, 40};
    /** A figure is called rare where fewer than one device in twenty shows it. */
    private static final double RARE = 0.05;

    private static BudgetResult pair(double scatterUm, int steps) {
        StageAccuracy lower = stage("lower", 5e-3, scatterUm);
        StageAccuracy upper = stage("upper", 4.9e-3, scatterUm);
        return SettingBudget.of(Accuracies.at20(0.99, lower, upper), Setting.of(steps, -steps)).result();
    }

    private static StageAccuracy stage(String title, double pitchM, double scatterUm) {
        RowAccuracy row = Accuracies.printed(0.002, scatterUm * UM);
        return Accuracies.stage(title, pitchM, 50, 20, 15, row, row, 5 * UM);
    }

    /** The probability of an amount at least as large. */
    private static double larger(double readM, double deviationM) {
        return 2 * (1 - new NormalDistribution(0, deviationM).cumulativeProbability(readM));
    }

    private static void assertOrdinary(double readUm, double deviationM) {
        double larger = larger(readUm * UM, deviationM);
        assertTrue(RARE < larger && larger < 1 - RARE,
                readUm + " µm or more is seen with probability " + larger + " at a deviation of " + deviationM / UM + " µm");
    }

    @Test
    void twoMicrometresAfterOneStepAreOrdinary() {
        for (double scatter : SCATTERS_UM) {
            assertOrdinary(2, pair(scatter, 1).combined());
        }
    }

    @Test
    void threePointFourMicrometresAfterThreeStepsAreOrdinary() {
        for (double scatter : SCATTERS_UM) {
            assertOrdinary(3.4, pair(scatter, 3).combined());
        }
    }

    /** Coming back is the difference of two seats: what repeats cancels. */
    @Test
    void comingBackWithinTwoAndAHalfMicrometresIsOrdinary() {
        for (double scatter : SCATTERS_UM) {
            double deviation = Math.sqrt(2) * pair(scatter, 0).varying();
            assertTrue(larger(2.5 * UM, deviation) < 0.5, "most returns are within 2.5 µm");
            assertOrdinary(2.5, deviation);
        }
    }

    /** The error grows, yet less than with the steps, for most teeth stay engaged. */
    @Test
    void theTeethsPartGrowsWithTheRootOfTheSteps() {
        StageAccuracy lower = stage("lower", 5e-3, 30);
        double ratio = ToothErrors.spreadM(lower, 3) / ToothErrors.spreadM(lower, 1);
        assertTrue(Math.abs(ratio - Math.sqrt(3)) < 1e-9);
    }

    /** The model says something: ten times the reading would be as good as impossible, a twentieth of it rarely so small. */
    @Test
    void muchLargerOrSmallerFiguresWouldBeRare() {
        assertTrue(larger(20 * UM, pair(30, 1).combined()) < 1e-6);
        assertTrue(larger(0.1 * UM, pair(30, 1).combined()) > 1 - RARE);
    }
}
