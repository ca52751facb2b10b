// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import pitchstack.core.units.LinearScale;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;

/** Counts as a person would type them, and typed texts as a file keeps them. */
public final class TypedText {
    private TypedText() {
    }

    /** The text in the unit shown where it says the count exactly, else in millimetres or degrees, which do. */
    static String of(Scale scale, long count) {
        String shown = scale.format(count);
        return scale.parse(shown) == count ? shown : scale.decimal(count) + (scale.turn() == 0 ? " mm" : "°");
    }

    /**
     * A typed length with its unit, so that it means the same when the unit of the file is changed.
     *
     * @param typed a text that the scale can read
     * @param scale what it is read on
     * @throws QuantityException if the scale cannot read it
     */
    public static String withUnit(String typed, Scale scale) {
        scale.parse(typed);
        if (!(scale instanceof LinearScale linear)) {
            return typed.strip();
        }
        String longer = typed.strip() + " " + linear.unit().symbol();
        try {
            linear.parse(longer);
            return longer;
        } catch (QuantityException hasOne) {
            return typed.strip();
        }
    }
}
