// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry;

import java.util.List;

/**
 * How a row is clamped: by screws across its face, through holes or slots in its body.
 *
 * @param diameterMm of a hole, or the width of a slot; 0 where there are none
 * @param lengthMm of a slot along the row, its round ends included; that of a hole is its diameter
 * @param spacingMm from one to the next
 */
public record Clamping(double diameterMm, double lengthMm, double spacingMm) {
    /** No holes. */
    public static final Clamping NONE = new Clamping(0, 0, 0);

    /** Round holes. */
    public static Clamping holes(double diameterMm, double spacingMm) {
        return new Clamping(diameterMm, diameterMm, spacingMm);
    }

    /** Slots twice as long as wide, so that a row can be shifted by its screw's diameter before it is clamped. */
    public static Clamping slots(double widthMm, double spacingMm) {
        return new Clamping(widthMm, 2 * widthMm, spacingMm);
    }

    /** Whether there are any. */
    public boolean isGiven() {
        return diameterMm > 0;
    }

    /** The outline of one, anticlockwise about its middle. */
    public Outline outlineAt(double x, double y) {
        double radius = diameterMm / 2;
        double straight = (lengthMm - diameterMm) / 2;
        return new Outline(straight == 0
                ? List.of(new Corner(x, y - radius, 1), new Corner(x, y + radius, 1))
                : List.of(new Corner(x - straight, y - radius), new Corner(x + straight, y - radius, 1),
                        new Corner(x + straight, y + radius), new Corner(x - straight, y + radius, 1)));
    }
}
