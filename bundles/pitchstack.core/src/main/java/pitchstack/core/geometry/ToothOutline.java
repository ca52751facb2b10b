// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry;

import java.util.List;

/** The surface of one tooth, from the floor of the gap on its left to that on its right. */
public final class ToothOutline {
    private ToothOutline() {
    }

    /**
     * The corners from left to right, of a tooth whose middle stands at 0 and whose tip points up. The floor goes on
     * straight at both ends, to the middles of the gaps half a pitch away.
     *
     * @param form a form that has no {@linkplain FormProblem problem}
     */
    public static List<Corner> of(ToothForm form) {
        double gap = form.pitchMm() / 2;
        double tip = form.tipLandMm() / 2;
        RoundedWay way = new RoundedWay().to(-gap, form.floorMm());
        flankUp(way, form);
        way.to(-tip, form.addendumMm(), form.tipRadiusMm());
        if (form.slotMm() > 0) {
            slot(way, form.slotMm() / 2, form.addendumMm(), -form.dedendumMm());
        }
        way.to(tip, form.addendumMm(), form.tipRadiusMm());
        flankDown(way, form);
        return way.to(gap, form.floorMm()).corners();
    }

    /**
     * The same as points.
     *
     * @param sagMm how far a chord may stand off its arc, above 0
     */
    public static List<Point> points(ToothForm form, double sagMm) {
        return Outline.flat(of(form), false, sagMm);
    }

    private static void flankUp(RoundedWay way, ToothForm form) {
        double root = form.thicknessMm(-form.dedendumMm()) / 2;
        way.to(-root, form.floorMm(), form.floorRadiusMm());
        if (form.wellMm() > 0) {
            way.to(-root, -form.dedendumMm());
        }
    }

    private static void flankDown(RoundedWay way, ToothForm form) {
        double root = form.thicknessMm(-form.dedendumMm()) / 2;
        if (form.wellMm() > 0) {
            way.to(root, -form.dedendumMm());
        }
        way.to(root, form.floorMm(), form.floorRadiusMm());
    }

    /** A slot whose end is a half circle, so that nothing tears there. */
    private static void slot(RoundedWay way, double half, double top, double bottom) {
        way.to(-half, top).to(-half, bottom, half).to(half, bottom, half).to(half, top);
    }
}
