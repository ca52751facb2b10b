// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.export.Decimals;

/** Numbers in what files say of parts. */
final class Numbers {
    private static final int FACTOR_PLACES = 6;

    private Numbers() {
    }

    /** Femtometres as exact millimetres, without the unit. */
    static String mm(long femtometres) {
        return new LinearScale(LengthUnit.MM).decimal(femtometres);
    }

    /** A factor to a millionth. */
    static String factor(double factor) {
        return Decimals.of(factor, FACTOR_PLACES);
    }
}
