// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.Optional;
import pitchstack.analysis.Lengths;
import pitchstack.core.units.LinearScale;

/**
 * How a drawing is written.
 *
 * @param measure the letters
 * @param convention millimetres or inches, each with its own customs
 */
record Style(TextMeasure measure, Convention convention) {
    private static final long SECONDS_PER_TURN = 360 * 60 * 60;

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

    /** A tolerance to either side, rounded down to a micrometre, a tenth of a thou or a second; nothing below that. */
    Optional<String> tolerance(AxisView axis, long count) {
        long step = axis.isRotary() ? axis.spec().scale().turn() / SECONDS_PER_TURN : convention.finest();
        long down = count / step * step;
        return down == 0 ? Optional.empty() : Optional.of("±" + number(axis, down));
    }
}
