// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.TrueMinus;

/** How lengths are written on a drawing (both from memory of the standards). */
public enum Convention {
    /** Millimetres without a unit behind each number, no zeros at the end (ISO 129-1). */
    ISO(LengthUnit.MM, 4, 0, 1_000, "Dimensions in mm."),
    /** Inches without a zero before the point, always with three decimals or more (ASME Y14.5). */
    ASME(LengthUnit.INCH, 5, 3, 10_000, "Unless otherwise specified, dimensions are in inches.");

    private static final int FEMTOMETRE_DIGITS = 12;

    private final LengthUnit unit;
    private final int most;
    private final int least;
    private final long measured;
    private final String unitNote;

    Convention(LengthUnit unit, int most, int least, long measured, String unitNote) {
        this.unit = unit;
        this.most = most;
        this.least = least;
        this.measured = measured;
        this.unitNote = unitNote;
    }

    /** The unit of all lengths. */
    public LengthUnit unit() {
        return unit;
    }

    /** The finest step of a tolerance in femtometres: a micrometre or a tenth of a thou. */
    long finest() {
        return unit.femtometres() / measured;
    }

    /** The sentence about the unit that a drawing has to have. */
    public String unitNote() {
        return unitNote;
    }

    /**
     * A length as a number on the drawing, rounded half to even: to 0.1 µm, or to a hundredth of a thou.
     *
     * @param femtometres the length
     */
    public String number(long femtometres) {
        return number(BigDecimal.valueOf(femtometres), most);
    }

    /** The same with fewer decimals, for a length that follows from others and is not to be made to. */
    public String rounded(double mm, int decimals) {
        return number(BigDecimal.valueOf(mm).scaleByPowerOfTen(FEMTOMETRE_DIGITS), decimals);
    }

    private String number(BigDecimal femtometres, int decimals) {
        if (femtometres.signum() == 0) {
            return "0";
        }
        BigDecimal value = femtometres.divide(BigDecimal.valueOf(unit.femtometres()), decimals, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        String text = value.setScale(Math.max(least, value.scale()), RoundingMode.UNNECESSARY).toPlainString();
        return TrueMinus.in(this == ASME ? text.replaceFirst("^(-?)0\\.", "$1.") : text);
    }
}
