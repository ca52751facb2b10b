// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.Arrays;
import java.util.List;
import pitchstack.core.geometry.Clamping;
import pitchstack.core.geometry.Corner;
import pitchstack.core.geometry.Outline;
import pitchstack.core.geometry.solid.RowPart;
import pitchstack.core.geometry.solid.RowPlan;

/**
 * The holes or slots by which a row is clamped, in millimetres of the part.
 *
 * @param clamping their size; none at all where it is not given
 * @param fromLeft where their middles stand from the left end of the row, in order
 * @param fromBack how far their middles stand from the face away from the teeth
 */
record RowHoles(Clamping clamping, List<Double> fromLeft, double fromBack) {
    static final RowHoles NONE = new RowHoles(Clamping.NONE, List.of(), 0);

    /** Copies the list. */
    RowHoles {
        fromLeft = List.copyOf(fromLeft);
    }

    /** The holes of a part where it is made with them. */
    static RowHoles of(RowPart part) {
        List<Outline> holes = RowPlan.of(part).holes();
        return holes.isEmpty() ? NONE : new RowHoles(part.clamping(),
                holes.stream().map(hole -> middle(hole.corners().stream().mapToDouble(Corner::x).toArray())
                        - part.shape().startMm()).toList(),
                middle(holes.get(0).corners().stream().mapToDouble(Corner::y).toArray()) - part.shape().backMm());
    }

    /** The corners of a hole lie evenly about its middle. */
    private static double middle(double[] corners) {
        return Arrays.stream(corners).average().orElseThrow();
    }

    boolean isSlots() {
        return clamping.lengthMm() > clamping.diameterMm();
    }
}
