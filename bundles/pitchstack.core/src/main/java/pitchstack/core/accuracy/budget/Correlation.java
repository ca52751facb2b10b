// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.budget;

/**
 * How two inputs of a budget hang together.
 *
 * @param first place of one input in the budget, from 0
 * @param second place of the other
 * @param coefficient from −1 to 1
 */
public record Correlation(int first, int second, double coefficient) {
    /** Checks the numbers. */
    public Correlation {
        if (first == second) {
            throw new IllegalArgumentException("An input is not correlated with itself: " + first);
        }
        if (!(Math.abs(coefficient) <= 1)) {
            throw new IllegalArgumentException("A correlation is from -1 to 1, not " + coefficient);
        }
    }
}
