// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import pitchstack.core.geometry.Point;

/** Closed polygons. */
final class Rings {
    private Rings() {
    }

    /** The area of a polygon, above 0 where it runs anticlockwise. */
    static double areaMm2(List<Point> ring) {
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            Point a = ring.get(i);
            Point b = ring.get((i + 1) % ring.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return twice / 2;
    }

    /** The polygon in the other sense. */
    static List<Point> reversed(List<Point> ring) {
        List<Point> turned = new ArrayList<>(ring);
        Collections.reverse(turned);
        return turned;
    }
}
