// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import java.util.List;
import java.util.function.UnaryOperator;
import pitchstack.core.geometry.Point;

/**
 * A mark to engrave.
 *
 * @param rim its outline, anticlockwise
 * @param islands what stays standing within, clockwise
 */
public record Pocket(List<Point> rim, List<List<Point>> islands) {
    /** Copies the lists. */
    public Pocket {
        rim = List.copyOf(rim);
        islands = List.copyOf(islands);
    }

    /** The mark moved, point by point. */
    Pocket moved(UnaryOperator<Point> to) {
        return new Pocket(rim.stream().map(to).toList(),
                islands.stream().map(island -> island.stream().map(to).toList()).toList());
    }

    /** The mark with its outlines in the other sense, after it was mirrored. */
    Pocket turned() {
        return new Pocket(Rings.reversed(rim), islands.stream().map(Rings::reversed).toList());
    }

    /** Area engraved, square millimetres. */
    double areaMm2() {
        return Rings.areaMm2(rim) + islands.stream().mapToDouble(Rings::areaMm2).sum();
    }
}
