// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The side view of a row: its teeth on a straight body. In its own frame tooth i of a base row stands at i·p, tooth i of
 * a rider row at (i + ½)·p, since it lies in the gap after base tooth {@code start + index + i}; the reference line is
 * y = 0. Moved by ({@code start + index})·p along x, a rider row stands where it mates with its base row.
 *
 * @param side which row; a rider row has its teeth down
 * @param form its teeth
 * @param pitchFm the pitch as drawn, whole femtometres
 * @param teeth how many, at least 1
 * @param bodyMm thickness of the body behind the floor of the gaps, above 0
 * @param leanMm how far the middle of the face is ahead of its edges, along x: 0 where teeth are straight
 */
public record RowShape(Side side, ToothForm form, long pitchFm, int teeth, double bodyMm, double leanMm) {
    private static final double FM_PER_MM = 1e12;

    /** Where the middle of a tooth stands, from whole femtometres, on the edge of the face. */
    public double toothMm(int tooth) {
        long halves = 2L * tooth + (side == Side.RIDER ? 1 : 0);
        return Math.multiplyExact(halves, pitchFm) / (2 * FM_PER_MM);
    }

    /** Where the middle of the gap after a tooth stands; that before the first is the gap after tooth −1. */
    public double gapMm(int tooth) {
        long halves = 2L * tooth + (side == Side.RIDER ? 2 : 1);
        return Math.multiplyExact(halves, pitchFm) / (2 * FM_PER_MM);
    }

    /** The lowest x: half a pitch before the first tooth. */
    public double startMm() {
        return gapMm(-1);
    }

    /** The highest x: half a pitch after the last tooth, where its middle leans to. */
    public double endMm() {
        return gapMm(teeth - 1) + leanMm;
    }

    /** The back of the body, as a height over the reference line of a row whose teeth are up. */
    public double backMm() {
        return form.floorMm() - bodyMm;
    }

    /** The whole outline, at the edges of the face. */
    public Outline outline() {
        return side == Side.BASE ? teethUp() : new Outline(backwards(teethUp().corners().stream().map(Corner::mirrored)
                .toList()));
    }

    /** The whole outline, at the edges of the face, of a row that is turned over where its teeth are down. */
    public Outline teethUp() {
        List<Corner> tooth = ToothOutline.of(form);
        List<Corner> surface = new ArrayList<>();
        surface.add(new Corner(startMm(), backMm()));
        surface.add(new Corner(startMm(), form.floorMm()));
        for (int i = 0; i < teeth; i++) {
            double x = toothMm(i);
            tooth.forEach(corner -> surface.add(corner.shifted(x, 0)));
        }
        surface.add(new Corner(endMm(), form.floorMm()));
        surface.add(new Corner(endMm(), backMm()));
        return new Outline(backwards(surface));
    }

    /** An outline that has the material on its right, in the other sense. */
    private static List<Corner> backwards(List<Corner> way) {
        List<Corner> turned = new ArrayList<>();
        for (int i = 0; i < way.size(); i++) {
            double before = i == 0 ? way.get(way.size() - 1).bulge() : way.get(i - 1).bulge();
            turned.add(new Corner(way.get(i).x(), way.get(i).y(), -before));
        }
        Collections.reverse(turned);
        return turned;
    }
}
