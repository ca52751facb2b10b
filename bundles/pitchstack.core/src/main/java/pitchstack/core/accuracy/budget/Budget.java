// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.budget;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * An uncertainty budget: u² = Σᵢ Σⱼ cᵢ cⱼ uᵢ uⱼ rᵢⱼ (JCGM 100:2008, equation 16).
 *
 * <p>Effective degrees of freedom follow Welch and Satterthwaite (equation G.2b), which is for independent inputs.
 * Inputs that are correlated, directly or through others, therefore enter it as one, with the fewest degrees of freedom
 * among them: exact where they come from one fit, and cautious elsewhere.
 */
public final class Budget {
    /** What rounding may leave below 0 of an eigenvalue of a correlation matrix. */
    private static final double ROUNDING = 1e-9;

    private final List<Contribution> contributions;
    private final RealMatrix correlations;

    /** A budget of independent contributions. */
    public Budget(List<Contribution> contributions) {
        this(contributions, List.of());
    }

    /**
     * A budget of contributions some of which are correlated.
     *
     * @throws IllegalArgumentException if correlations contradict each other, or tie what repeats to what does not
     */
    public Budget(List<Contribution> contributions, List<Correlation> correlated) {
        this.contributions = List.copyOf(contributions);
        int size = contributions.size();
        correlations = size == 0 ? null : MatrixUtils.createRealIdentityMatrix(size);
        for (Correlation pair : correlated) {
            requireSamePersistence(contributions.get(pair.first()), contributions.get(pair.second()), pair);
            correlations.setEntry(pair.first(), pair.second(), pair.coefficient());
            correlations.setEntry(pair.second(), pair.first(), pair.coefficient());
        }
        if (!correlated.isEmpty()) {
            requirePossible(correlated.stream().flatMapToInt(pair -> IntStream.of(pair.first(), pair.second())).distinct()
                    .toArray());
        }
    }

    private static void requireSamePersistence(Contribution one, Contribution other, Correlation pair) {
        if (one.persistence() != other.persistence() && pair.coefficient() != 0) {
            throw new IllegalArgumentException("“" + one.name() + "” and “" + other.name()
                    + "” cannot be correlated: one repeats and the other does not");
        }
    }

    /** Only inputs that are correlated can contradict each other. */
    private void requirePossible(int[] inputs) {
        RealMatrix part = correlations.getSubMatrix(inputs, inputs);
        for (double eigenvalue : new EigenDecompositionSymmetric(part).getEigenvalues()) {
            if (eigenvalue < -ROUNDING * contributions.size()) {
                throw new IllegalArgumentException("These correlations contradict each other: their matrix has the "
                        + "eigenvalue " + eigenvalue);
            }
        }
    }

    /** The combined standard uncertainty alone. */
    public double combined() {
        return root(Arrays.stream(parts()).sum());
    }

    /** Combines the contributions and expands to 95 %. */
    public BudgetResult result() {
        return result(Coverage.USUAL);
    }

    /**
     * Combines the contributions.
     *
     * @param confidence of the expanded uncertainty, between 0 and 1
     */
    public BudgetResult result(double confidence) {
        double[] parts = parts();
        double variance = 0;
        double repeating = 0;
        for (int i = 0; i < parts.length; i++) {
            variance += parts[i];
            repeating += contributions.get(i).persistence() == Persistence.REPEATS ? parts[i] : 0;
        }
        List<BudgetResult.Line> lines = new ArrayList<>();
        for (int i = 0; i < parts.length; i++) {
            lines.add(new BudgetResult.Line(contributions.get(i), variance > 0 ? parts[i] / variance : 0));
        }
        double freedom = degreesOfFreedom(parts, variance);
        return new BudgetResult(lines, root(variance), root(repeating), root(variance - repeating), freedom, confidence,
                Coverage.factor(confidence, Coverage.truncated(freedom)));
    }

    /** The part of each contribution of the variance. */
    private double[] parts() {
        double[] parts = new double[contributions.size()];
        for (int i = 0; i < parts.length; i++) {
            double sum = 0;
            for (int j = 0; j < parts.length; j++) {
                sum += correlations.getEntry(i, j) * contributions.get(j).amount();
            }
            parts[i] = contributions.get(i).amount() * sum;
        }
        return parts;
    }

    /** Cancellation can leave a variance of 0 a little below it. */
    private static double root(double variance) {
        return Math.sqrt(Math.max(0, variance));
    }

    private double degreesOfFreedom(double[] parts, double variance) {
        boolean[] seen = new boolean[parts.length];
        double sum = 0;
        for (int i = 0; i < parts.length; i++) {
            if (!seen[i]) {
                List<Integer> group = new ArrayList<>();
                collect(i, seen, group);
                double part = group.stream().mapToDouble(k -> parts[k]).sum();
                sum += part * part / group.stream().filter(k -> contributions.get(k).amount() != 0)
                        .mapToDouble(k -> contributions.get(k).degreesOfFreedom()).min().orElse(Double.POSITIVE_INFINITY);
            }
        }
        return sum > 0 && variance > 0 ? variance * variance / sum : Double.POSITIVE_INFINITY;
    }

    /** All inputs that hang together with one. */
    private void collect(int from, boolean[] seen, List<Integer> group) {
        seen[from] = true;
        group.add(from);
        for (int other = 0; other < seen.length; other++) {
            if (!seen[other] && correlations.getEntry(from, other) != 0) {
                collect(other, seen, group);
            }
        }
    }
}
