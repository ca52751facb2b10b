// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.plot;

import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.Scale;

/** Units of chart axes: how many there are in a metre, or in a radian. */
public enum PlotUnit {
    /** Millimetres. */
    MM("mm", 1e3),
    /** Micrometres. */
    UM("µm", 1e6),
    /** Inches. */
    INCH("in", 1 / 0.0254),
    /** Thousandths of an inch. */
    THOU("thou", 1e3 / 0.0254),
    /** Degrees. */
    DEGREE("°", 180 / Math.PI),
    /** Arc seconds. */
    ARC_SECOND("″", 180 * 3600 / Math.PI);

    private final String symbol;
    private final double perSi;

    PlotUnit(String symbol, double perSi) {
        this.symbol = symbol;
        this.perSi = perSi;
    }

    /** The symbol after a number. */
    public String symbol() {
        return symbol;
    }

    /** A number of metres or radians in this unit. */
    public double of(double si) {
        return si * perSi;
    }

    /** For positions on an axis of a scale. */
    public static PlotUnit ofPositions(Scale scale) {
        return scale instanceof LinearScale linear ? isInch(linear) ? INCH : MM : DEGREE;
    }

    /** For errors on an axis of a scale: a thousandth of it, or arc seconds. */
    public static PlotUnit ofErrors(Scale scale) {
        return scale instanceof LinearScale linear ? isInch(linear) ? THOU : UM : ARC_SECOND;
    }

    private static boolean isInch(LinearScale scale) {
        return scale.unit() == LengthUnit.INCH || scale.unit() == LengthUnit.THOU;
    }
}
