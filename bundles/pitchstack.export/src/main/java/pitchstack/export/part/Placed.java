// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.geometry.solid.Solid;

/**
 * A solid on the bed of a printer.
 *
 * @param solid the solid, in its own corner of the bed
 * @param yMm how far from the front edge of the bed it lies
 */
public record Placed<S extends Solid>(S solid, double yMm) {
    /** Between two parts on one bed: room for a skirt and a scraper. Common practice, no source. */
    private static final double GAP_MM = 5;

    /** Solids one behind the other, all along x and against the left edge. */
    public static <S extends Solid> List<Placed<S>> behindEachOther(List<S> solids) {
        List<Placed<S>> plate = new ArrayList<>();
        double y = 0;
        for (S solid : solids) {
            plate.add(new Placed<>(solid, y));
            y += solid.extent().yMm() + GAP_MM;
        }
        return plate;
    }
}
