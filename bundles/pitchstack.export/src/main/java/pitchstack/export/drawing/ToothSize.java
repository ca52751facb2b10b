// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A tooth of a row as wide as its gap at the pitch line, in millimetres of the part.
 *
 * @param pitch tooth spacing, above 0
 * @param flankDeg of a flank from the normal of the pitch line
 * @param addendum from the pitch line to the tip
 * @param dedendum from the pitch line to the root
 */
record ToothSize(double pitch, double flankDeg, double addendum, double dedendum) {
    double depth() {
        return addendum + dedendum;
    }

    /** Half as thick as the tooth is at its tip; 0 where the flanks meet below. */
    double tipHalf() {
        return Math.max(0, pitch / 4 - addendum * tan());
    }

    /** Half as thick as the tooth is at its root, without a fillet. */
    double rootHalf() {
        return Math.min(pitch / 2, pitch / 4 + dedendum * tan());
    }

    double tan() {
        return Math.tan(Math.toRadians(flankDeg));
    }

    /**
     * The corners of one tooth from left to right: root, tip, tip, root.
     *
     * @param centre the x of its middle
     * @param pitchLine the y of the pitch line
     * @param up 1 for a tooth that stands up, −1 for one that hangs down
     */
    List<Point> corners(double centre, double pitchLine, int up) {
        List<Point> corners = new ArrayList<>(4);
        corners.add(new Point(centre - rootHalf(), pitchLine - up * dedendum));
        corners.add(new Point(centre - tipHalf(), pitchLine + up * addendum));
        corners.add(new Point(centre + tipHalf(), pitchLine + up * addendum));
        corners.add(new Point(centre + rootHalf(), pitchLine - up * dedendum));
        return corners;
    }
}
