// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.budget;

/**
 * One input of a budget.
 *
 * @param name what it is, for people
 * @param method how it was found
 * @param distribution the shape of what is not known
 * @param standardUncertainty in the unit of the input, at least 0
 * @param sensitivity by how much the result changes for each unit of the input, with its sign
 * @param degreesOfFreedom above 0, or infinite
 * @param persistence whether the error comes back the same each time
 */
public record Contribution(String name, Method method, Distribution distribution, double standardUncertainty,
        double sensitivity, double degreesOfFreedom, Persistence persistence) {
    /** Checks the numbers. */
    public Contribution {
        if (!(standardUncertainty >= 0) || Double.isInfinite(standardUncertainty)) {
            throw new IllegalArgumentException(name + ": a standard uncertainty is at least 0 and finite, not "
                    + standardUncertainty);
        }
        if (!Double.isFinite(sensitivity)) {
            throw new IllegalArgumentException(name + ": a sensitivity is finite, not " + sensitivity);
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException(name + ": degrees of freedom are above 0, not " + degreesOfFreedom);
        }
    }

    /** From repeated observations: a standard uncertainty with its degrees of freedom, sensitivity 1, that varies. */
    public static Contribution observed(String name, double standardUncertainty, double degreesOfFreedom) {
        return new Contribution(name, Method.TYPE_A, Distribution.STUDENT, standardUncertainty, 1, degreesOfFreedom,
                Persistence.VARIES);
    }

    /** From other knowledge: a half width of a shape, known as well as it is needed, sensitivity 1, that repeats. */
    public static Contribution believed(String name, Distribution distribution, double halfWidth) {
        return new Contribution(name, Method.TYPE_B, distribution, distribution.standardUncertainty(halfWidth), 1,
                Double.POSITIVE_INFINITY, Persistence.REPEATS);
    }

    /**
     * The part that remains of a product of two inputs whose best estimates are both 0, where the first-order terms
     * vanish: u(x)·u(y) (JCGM 100:2008, note of 5.1.2).
     *
     * @param first standard uncertainty of one input
     * @param second standard uncertainty of the other
     */
    public static Contribution secondOrder(String name, double first, double second) {
        return believed(name, Distribution.NORMAL, first * second);
    }

    /** The same with another sensitivity. */
    public Contribution times(double changed) {
        return new Contribution(name, method, distribution, standardUncertainty, changed, degreesOfFreedom, persistence);
    }

    /** The same known with other degrees of freedom. */
    public Contribution knownWith(double changed) {
        return new Contribution(name, method, distribution, standardUncertainty, sensitivity, changed, persistence);
    }

    /** The same, coming back each time or not. */
    public Contribution that(Persistence changed) {
        return new Contribution(name, method, distribution, standardUncertainty, sensitivity, degreesOfFreedom, changed);
    }

    /** What it adds to the result, with the sign of its sensitivity, in the unit of the result. */
    public double amount() {
        return sensitivity * standardUncertainty;
    }
}
