// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.part;

import java.util.Optional;
import pitchstack.analysis.accuracy.PrintScales;
import pitchstack.core.accuracy.fit.PrintScale;
import pitchstack.core.units.QuantityException;
import pitchstack.model.BedDirection;
import pitchstack.model.Positioner;
import pitchstack.model.PrintSetup;

/**
 * By what a drawing is multiplied so that its print comes out true.
 *
 * @param factorX along x of the bed; 1 where nothing was measured
 * @param factorY along y
 * @param measuredX whether a span along x was measured
 * @param measuredY whether one along y was
 */
public record BedScale(double factorX, double factorY, boolean measuredX, boolean measuredY) {
    /** As drawn. */
    public static final BedScale NONE = new BedScale(1, 1, false, false);
    /** No printer is off by as much; a span then was mistyped. */
    private static final double FARTHEST = 0.1;

    /**
     * That of a print set-up.
     *
     * @param name the name of the set-up, as a row gives it
     * @throws QuantityException if a span cannot be read, or is no span of a printer
     */
    static BedScale of(Positioner positioner, String name) {
        Optional<PrintSetup> named = positioner.getPrintSetups().stream().filter(setup -> name.equals(setup.getName()))
                .findFirst();
        if (named.isEmpty()) {
            return NONE;
        }
        PrintScales scales = PrintScales.of(named.get());
        if (!scales.unreadable().isEmpty()) {
            throw new QuantityException(scales.unreadable().get(0));
        }
        PrintScale x = scales.byDirection().get(BedDirection.X);
        PrintScale y = scales.byDirection().get(BedDirection.Y);
        return new BedScale(factor(x, name), factor(y, name), x != null, y != null);
    }

    private static double factor(PrintScale scale, String setup) {
        double factor = scale == null ? 1 : scale.factor();
        if (!(Math.abs(factor - 1) < FARTHEST)) {
            throw new QuantityException("The spans measured on print set-up “" + setup + "” differ by "
                    + Math.round(Math.abs(1 / factor - 1) * 100)
                    + " % from those drawn; less than 10 % is allowed, so correct the spans.");
        }
        return factor;
    }
}
