// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.material;

/**
 * How a material grows with temperature.
 *
 * @param perK coefficient of linear expansion about 20 °C
 * @param uncertaintyPerK its standard uncertainty, at least 0
 */
public record Expansion(double perK, double uncertaintyPerK) {
    /** Checks the numbers. */
    public Expansion {
        if (!Double.isFinite(perK) || !(uncertaintyPerK >= 0) || Double.isInfinite(uncertaintyPerK)) {
            throw new IllegalArgumentException("Expansion is finite and its uncertainty at least 0, not " + perK + " and "
                    + uncertaintyPerK);
        }
    }
}
