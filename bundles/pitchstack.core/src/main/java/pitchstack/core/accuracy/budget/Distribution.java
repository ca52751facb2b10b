// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.budget;

/** The shape of what is not known, and how a half width turns into a standard uncertainty (JCGM 100:2008, 4.3). */
public enum Distribution {
    /** Gaussian; the width given is the standard uncertainty itself. */
    NORMAL(1),
    /** Student's, from few observations; the width given is the standard uncertainty itself. */
    STUDENT(1),
    /** Anywhere within ±a alike: a/√3. */
    RECTANGULAR(Math.sqrt(3)),
    /** More likely in the middle of ±a, as the sum of two equal rectangular ones: a/√6. */
    TRIANGULAR(Math.sqrt(6)),
    /** A cycle of amplitude a met at any time, as a temperature that is controlled: a/√2. */
    ARCSINE(Math.sqrt(2));

    private final double divisor;

    Distribution(double divisor) {
        this.divisor = divisor;
    }

    /** The standard uncertainty of a half width, both in the unit of the input, at least 0. */
    public double standardUncertainty(double halfWidth) {
        return halfWidth / divisor;
    }
}
