// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.budget;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * JCGM 100:2008, example H.1: a 50 mm end gauge against a standard, in nanometres. l = lₛ + d − lₛ(δα·θ + αₛ·δθ), where θ
 * is −0.1 °C on average and swings by 0.5 °C.
 */
class GumEndGaugeH1Test {
    private static final double STANDARD_NM = 50_000_623;
    private static final double EXPANSION = 11.5e-6;
    private static final double MEAN_TEMPERATURE = -0.1;

    private static final Contribution EXPANSION_DIFFERENCE =
            Contribution.believed("difference of expansion", Distribution.RECTANGULAR, 1e-6);
    private static final Contribution TEMPERATURE_DIFFERENCE =
            Contribution.believed("difference of temperature", Distribution.RECTANGULAR, 0.05);

    /** The comparison: repeats, random and systematic effects of the comparator. */
    private static BudgetResult difference() {
        return new Budget(List.of(Contribution.observed("repeats", 5.8, 24), Contribution.observed("random", 3.9, 5),
                Contribution.observed("systematic", 6.7, 8))).result(0.99);
    }

    private static List<Contribution> firstOrder() {
        BudgetResult difference = difference();
        return List.of(Contribution.observed("standard", 25, 18),
                Contribution.observed("comparison", difference.combined(), difference.degreesOfFreedom()),
                EXPANSION_DIFFERENCE.knownWith(50).times(-STANDARD_NM * MEAN_TEMPERATURE),
                TEMPERATURE_DIFFERENCE.knownWith(2).times(-STANDARD_NM * EXPANSION));
    }

    @Test
    void combinesTheComparisonTo9Point7NanometresWith25Point6DegreesOfFreedom() {
        assertEquals(9.7, difference().combined(), 0.05);
        // The GUM computes with the rounded 9.7, whose fourth power is 0.7 % larger.
        assertEquals(25.6 * Math.pow(difference().combined() / 9.7, 4), difference().degreesOfFreedom(), 0.05);
    }

    @Test
    void combinesTo32NanometresWith16DegreesOfFreedom() {
        BudgetResult result = new Budget(firstOrder()).result(0.99);
        assertEquals(32, result.combined(), 0.5);
        assertEquals(16, Coverage.truncated(result.degreesOfFreedom()));
        assertEquals(16.7, result.degreesOfFreedom(), 0.1);
    }

    @Test
    void expandsTo93NanometresAt99Percent() {
        BudgetResult result = new Budget(firstOrder()).result(0.99);
        assertEquals(2.92, result.factor(), 0.005);
        // The GUM multiplies rounded numbers, 2.92 × 32.
        assertEquals(93, result.expanded(), 1);
    }

    @Test
    void listsTheComponentsOfTableH1() {
        List<Contribution> lines = firstOrder();
        assertEquals(2.9, Math.abs(lines.get(2).amount()), 0.05);
        assertEquals(16.6, Math.abs(lines.get(3).amount()), 0.05);
    }

    @Test
    void combinesTo34NanometresWithTheSecondOrderTerms() {
        double temperature = Math.hypot(0.2, Distribution.ARCSINE.standardUncertainty(0.5));
        Contribution one = Contribution.secondOrder("expansion × temperature",
                EXPANSION_DIFFERENCE.standardUncertainty(), temperature).times(STANDARD_NM);
        Contribution other = Contribution.secondOrder("temperature × expansion",
                Distribution.RECTANGULAR.standardUncertainty(2e-6), TEMPERATURE_DIFFERENCE.standardUncertainty())
                .times(STANDARD_NM);
        assertEquals(11.7, one.amount(), 0.05);
        assertEquals(1.7, other.amount(), 0.05);
        List<Contribution> all = new ArrayList<>(firstOrder());
        all.add(one);
        all.add(other);
        assertEquals(34, new Budget(all).result(0.99).combined(), 0.5);
    }
}
