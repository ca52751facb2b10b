// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.accuracy;

import pitchstack.export.plot.Figures;
import pitchstack.export.plot.PlotUnit;
import pitchstack.core.units.Scale;

/**
 * Sizes as people of the shop read them: errors in two digits, since no uncertainty is known to three.
 *
 * @param scale of the axis
 */
record Sizes(Scale scale) {
    private static final int DIGITS = 2;

    /** A size in the unit of the axis: 0.062 mm. */
    String large(double si) {
        PlotUnit unit = scale.turn() > 0 ? PlotUnit.ARC_SECOND : positions();
        return with(unit, si);
    }

    /** The same as half a width: ±0.062 mm. */
    String within(double si) {
        return "±" + large(si);
    }

    /** A small size: 62 µm. */
    String small(double si) {
        return with(errors(), si);
    }

    /** The same as half a width: ±62 µm. */
    String plusMinus(double si) {
        return "±" + small(si);
    }

    /** A small size without its unit. */
    String bare(double si) {
        return Figures.of(errors().of(si), DIGITS);
    }

    private static String with(PlotUnit unit, double si) {
        String gap = unit == PlotUnit.ARC_SECOND ? "" : " ";
        return Figures.of(unit.of(si), DIGITS) + gap + unit.symbol();
    }

    PlotUnit positions() {
        return PlotUnit.ofPositions(scale);
    }

    PlotUnit errors() {
        return PlotUnit.ofErrors(scale);
    }

    boolean isRotary() {
        return scale.turn() > 0;
    }
}
