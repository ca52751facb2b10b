// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import pitchstack.core.units.Scale;

/** A count as a person would type it. */
final class TypedText {
    private TypedText() {
    }

    /** The text in the unit shown where it says the count exactly, else in millimetres or degrees, which do. */
    static String of(Scale scale, long count) {
        String shown = scale.format(count);
        return scale.parse(shown) == count ? shown : scale.decimal(count) + (scale.turn() == 0 ? " mm" : "°");
    }
}
