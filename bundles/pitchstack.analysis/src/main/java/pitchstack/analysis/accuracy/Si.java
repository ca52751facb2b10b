// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.Scale;

/** Counts of a scale as SI numbers and back: metres on a linear axis, radians on a rotary one. */
public final class Si {
    /** What a length without a unit means where it is not one along an axis, as in the property sheet. */
    private static final LinearScale LENGTHS = new LinearScale(LengthUnit.MM);
    private static final double FEMTOMETRES_IN_METRE = 1e15;

    private Si() {
    }

    /** Counts of a scale in metres or radians. */
    public static double of(long counts, Scale scale) {
        return counts / countsPerUnit(scale);
    }

    /** Metres or radians in counts of a scale, rounded; what does not fit becomes the largest count. */
    public static long counts(double si, Scale scale) {
        return Math.round(si * countsPerUnit(scale));
    }

    private static double countsPerUnit(Scale scale) {
        return scale.turn() == 0 ? FEMTOMETRES_IN_METRE : scale.turn() / (2 * Math.PI);
    }

    /**
     * A length that lies in no axis, such as a width, in metres.
     *
     * @throws pitchstack.core.units.QuantityException if it cannot be read
     */
    static double lengthM(String text) {
        return LENGTHS.parse(text) / FEMTOMETRES_IN_METRE;
    }
}
