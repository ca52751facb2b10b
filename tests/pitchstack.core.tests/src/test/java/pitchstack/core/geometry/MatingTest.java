// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;

/** Rows as they mate, looked at with the geometry library JTS: they bear on their flanks, and on nothing else. */
class MatingTest {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double SAG = 1e-5;
    /** A tenth of a micrometre: flanks that are nearer than this touch. */
    private static final double TOUCH = 1e-4;
    private static final int BASE_TEETH = 16;
    private static final int RIDER_TEETH = 6;
    private static final int START = 2;

    static Stream<Arguments> formsAtIndices() {
        double module = 5 / Math.PI;
        List<ToothForm> forms = List.of(ToothForm.of(BasicRack.A, 5), ToothForm.of(BasicRack.B, 5),
                ToothForm.of(BasicRack.C, Math.PI), ToothForm.of(BasicRack.D, 6.35),
                ToothForm.of(BasicRack.A, 5).eased(0.2, 1, 0.5), ToothForm.own(4, 30, 2, 0.3, 0.2).eased(0.1, 0, 0),
                ToothForm.own(5, 14.5, 2.25 * module, 0.25 * module, 0).filleted());
        return forms.stream().flatMap(form -> Stream.of(-7, -2, 0, 3, 8, 13).map(index -> Arguments.of(form, index)));
    }

    private static RowShape row(Side side, ToothForm form, int teeth) {
        return new RowShape(side, form, Math.round(form.pitchMm() * 1e12), teeth, 4, 0);
    }

    private static Geometry polygon(Outline outline) {
        List<Point> points = outline.polygon(SAG);
        Coordinate[] ring = Stream.concat(points.stream(), points.stream().limit(1))
                .map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new);
        return FACTORY.createPolygon(ring);
    }

    private static Geometry base(ToothForm form) {
        return polygon(row(Side.BASE, form, BASE_TEETH).outline());
    }

    private static Geometry rider(ToothForm form, int index) {
        double along = (START + index) * (Math.round(form.pitchMm() * 1e12) / 1e12);
        return AffineTransformation.translationInstance(along, 0)
                .transform(polygon(row(Side.RIDER, form, RIDER_TEETH).outline()));
    }

    private static int engaged(int index) {
        return new RowPair(new RowSpec(BASE_TEETH, List.of()), new RowSpec(RIDER_TEETH, List.of()), START, 1)
                .engagedBase(index).count();
    }

    /**
     * The flanks that touch. The rider tooth over base tooth i lies against its right flank and the left one of the next;
     * over the last base tooth it has no next, and a rider that hangs over the left end brings its tooth before that too.
     */
    private static int flanks(int index) {
        int first = START + index;
        int last = first + RIDER_TEETH - 1;
        int flanks = 2 * engaged(index);
        return flanks - (last >= BASE_TEETH - 1 ? 1 : 0) + (first < 0 ? 1 : 0);
    }

    @ParameterizedTest
    @MethodSource("formsAtIndices")
    void rowsDoNotReachIntoEachOtherAtAnyIndex(ToothForm form, int index) {
        Geometry base = base(form);
        Geometry rider = rider(form, index);
        assertTrue(base.isValid() && rider.isValid());
        // As deep as a rounding of a double and a chord of an arc; an area of that depth along all flanks.
        assertTrue(base.intersection(rider).getArea() < 1e-5, () -> "overlap " + base.intersection(rider).getArea());
    }

    @ParameterizedTest
    @MethodSource("formsAtIndices")
    void flanksBearOverTheirStatedLengthAndNothingElseTouches(ToothForm form, int index) {
        Geometry near = base(form).getBoundary().buffer(TOUCH, 4);
        Geometry touching = rider(form, index).getBoundary().intersection(near);
        // A buffer also catches the first micrometres of roundings that leave the flank tangentially: √(2·r·TOUCH) each.
        double tangent = Math.sqrt(2 * TOUCH) * (Math.sqrt(form.tipRadiusMm()) + Math.sqrt(form.filletMm())) + 3 * TOUCH;
        assertEquals(flanks(index) * form.bearingMm(), touching.getLength(), flanks(index) * tangent);
    }

    @ParameterizedTest
    @MethodSource("formsAtIndices")
    void tipsStandOffRootsByTheClearance(ToothForm form, int index) {
        double tip = form.addendumMm();
        Geometry base = base(form);
        // The middle of the tip of a rider tooth, straight above the floor of the gap that it lies in.
        double x = row(Side.RIDER, form, RIDER_TEETH).toothMm(START + Math.max(index, 0));
        Geometry point = FACTORY.createPoint(new Coordinate(x, -tip));
        double wide = form.rootGapMm() / 2;
        double below = form.clearanceMm() + form.wellMm();
        assertTrue(base.distance(point) <= below + 1e-9);
        assertTrue(base.distance(point) >= Math.min(below, Math.min(wide, form.clearanceMm())) - 1e-9);
    }

    @Test
    void aRiderOnePartInAThousandTooLargeDoesReachIn() {
        // The check is able to fail: six teeth at a pitch of 5.005 mm do not fit over 5 mm.
        Geometry base = base(ToothForm.of(BasicRack.A, 5));
        Geometry rider = AffineTransformation.scaleInstance(1.001, 1).transform(rider(ToothForm.of(BasicRack.A, 5), 0));
        assertTrue(base.intersection(rider).getArea() > 1e-2);
    }
}
