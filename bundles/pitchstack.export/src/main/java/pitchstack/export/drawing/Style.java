// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import pitchstack.analysis.Lengths;
import pitchstack.core.units.LinearScale;

/**
 * How a drawing is written.
 *
 * @param measure the letters
 * @param convention millimetres or inches, each with its own customs
 */
record Style(TextMeasure measure, Convention convention) {
    /** Reads lengths of the file, whose unit is that of the drawing. */
    Lengths lengths() {
        return new Lengths(new LinearScale(convention.unit()));
    }

    Pencil pencil() {
        return new Pencil(measure);
    }

    /** A length or an angle of an axis, exact to what a drawing shows. */
    String number(AxisView axis, long count) {
        if (!axis.isRotary()) {
            return convention.number(count);
        }
        String angle = axis.spec().scale().format(count);
        return angle.replaceFirst("00\"$", "").replaceFirst("(°)00'$", "$1");
    }
}
