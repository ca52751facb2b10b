// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.budget;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Budgets whose sums can be done by hand. */
class BudgetTest {
    private static final double EXACT = 1e-12;

    private static Contribution normal(String name, double u) {
        return Contribution.believed(name, Distribution.NORMAL, u);
    }

    /** 25 teeth of 5 mm forward and 25 of 4.9 mm back, each pitch known to 0.1 %: √(125² + 122.5² − 2ρ·125·122.5) µm. */
    @ParameterizedTest
    @CsvSource({"0,175.02", "0.9,55.40", "0.99,17.68", "1,2.50"})
    void letsSharedScaleOfAForwardAndABackStageCancel(double correlation, double expectedUm) {
        List<Contribution> scales = List.of(normal("5 mm", 0.001).times(0.125), normal("4.9 mm", 0.001).times(-0.1225));
        BudgetResult result = new Budget(scales, List.of(new Correlation(0, 1, correlation))).result();
        assertEquals(expectedUm, result.combined() * 1e6, 0.005);
        assertEquals(Math.sqrt(125.0 * 125 + 122.5 * 122.5 - 2 * correlation * 125 * 122.5), result.combined() * 1e6, 1e-9);
    }

    @Test
    void sharesAddUpToOneAndTheOneThatCancelsIsNegative() {
        BudgetResult result = new Budget(List.of(normal("forward", 2), normal("back", 1).times(-1), normal("free", 3)),
                List.of(new Correlation(0, 1, 0.75))).result();
        // Variance 4 + 1 − 2·0.75·2 + 9 = 11; parts 4 − 1.5, 1 − 1.5 and 9.
        assertEquals(Math.sqrt(11), result.combined(), EXACT);
        assertEquals(2.5 / 11, result.lines().get(0).share(), EXACT);
        assertEquals(-0.5 / 11, result.lines().get(1).share(), EXACT);
        assertEquals(9.0 / 11, result.lines().get(2).share(), EXACT);
    }

    @Test
    void tellsWhatRepeatsFromWhatVaries() {
        BudgetResult result = new Budget(List.of(normal("pitch", 3), normal("seat", 4).that(Persistence.VARIES))).result();
        assertEquals(3, result.repeating(), EXACT);
        assertEquals(4, result.varying(), EXACT);
        assertEquals(5, result.combined(), EXACT);
    }

    @Test
    void takesCorrelatedInputsOfOneFitAsOneWithTheirDegreesOfFreedom() {
        BudgetResult result = new Budget(List.of(Contribution.observed("intercept", 1, 9), Contribution.observed("slope", 2, 9)),
                List.of(new Correlation(0, 1, -0.5))).result();
        assertEquals(Math.sqrt(3), result.combined(), EXACT);
        assertEquals(9, result.degreesOfFreedom(), 1e-9);
    }

    /** Welch and Satterthwaite for two equal inputs of ν each give 2ν. */
    @Test
    void doublesTheDegreesOfFreedomOfTwoEqualInputs() {
        assertEquals(14, new Budget(List.of(Contribution.observed("a", 1, 7), Contribution.observed("b", 1, 7))).result()
                .degreesOfFreedom(), 1e-9);
    }

    @Test
    void usesTheGaussianFactorWhereEverythingIsKnownWell() {
        assertEquals(1.959964, new Budget(List.of(normal("a", 1))).result().factor(), 1e-6);
        assertEquals(1.959964, new Budget(List.of()).result().factor(), 1e-6);
        assertEquals(0, new Budget(List.of()).result().expanded());
        assertEquals(0, new Budget(List.of(normal("a", 0))).result().expanded());
    }

    @Test
    void refusesCorrelationsThatContradictEachOther() {
        List<Contribution> three = List.of(normal("a", 1), normal("b", 1), normal("c", 1));
        List<Correlation> impossible =
                List.of(new Correlation(0, 1, 0.9), new Correlation(1, 2, 0.9), new Correlation(0, 2, -0.9));
        assertThrows(IllegalArgumentException.class, () -> new Budget(three, impossible));
        assertThrows(IllegalArgumentException.class, () -> new Correlation(0, 1, 1.1));
        assertThrows(IllegalArgumentException.class, () -> new Correlation(1, 1, 1));
    }

    @Test
    void refusesToTieWhatRepeatsToWhatVaries() {
        List<Contribution> two = List.of(normal("a", 1), normal("b", 1).that(Persistence.VARIES));
        assertThrows(IllegalArgumentException.class, () -> new Budget(two, List.of(new Correlation(0, 1, 0.5))));
    }

    @ParameterizedTest
    @CsvSource({"-1,1,1", "NaN,1,1", "Infinity,1,1", "1,NaN,1", "1,1,0", "1,1,NaN"})
    void refusesNumbersThatCannotBe(double u, double sensitivity, double freedom) {
        assertThrows(IllegalArgumentException.class, () -> new Contribution("x", Method.TYPE_B, Distribution.NORMAL, u,
                sensitivity, freedom, Persistence.REPEATS));
    }

    /** JCGM 100:2008, 4.3.7 and 4.3.9: variance a²/3 of a rectangle and a²/6 of a triangle; a²/2 of a sine. */
    @Test
    void turnsHalfWidthsIntoStandardUncertainties() {
        assertEquals(1 / Math.sqrt(3), Distribution.RECTANGULAR.standardUncertainty(1), EXACT);
        assertEquals(1 / Math.sqrt(6), Distribution.TRIANGULAR.standardUncertainty(1), EXACT);
        assertEquals(1 / Math.sqrt(2), Distribution.ARCSINE.standardUncertainty(1), EXACT);
        assertEquals(1, Distribution.NORMAL.standardUncertainty(1));
    }
}
