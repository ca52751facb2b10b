// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import java.util.List;
import pitchstack.core.geometry.Outline;
import pitchstack.core.geometry.RowShape;
import pitchstack.core.geometry.Side;

/**
 * A row as a solid, lying on its side with its teeth along x. It is sent some teeth at a time, cut apart in the middle of
 * gaps where neither hole nor mark is; of a cut the solid shows corners and nothing else. Where teeth lean, they go ahead
 * straight to the middle of the face and back again, while body and holes stay straight.
 */
public final class RowSolid implements Solid {
    /** How far a chord may stand off its arc: far below what a printer's motors resolve. */
    public static final double SAG_MM = 0.002;
    /** Depth of marks: two layers of 0.2 mm. Common practice, no source. */
    private static final double DEPTH_MM = 0.4;
    private static final int TEETH_A_PIECE = 2;

    private final RowPart part;
    private final RowPlan plan;
    private final double factorX;
    private final double factorY;

    /**
     * A row on the bed.
     *
     * @param part a row without a {@linkplain RowPlan#problem problem}
     * @param factorX by what to multiply along the row
     * @param factorY by what to multiply up its teeth
     */
    public RowSolid(RowPart part, double factorX, double factorY) {
        this.part = part;
        this.factorX = factorX;
        this.factorY = factorY;
        plan = RowPlan.of(part);
    }

    /** Where holes and marks are. */
    public RowPlan plan() {
        return plan;
    }

    /** How the side view of the row, in its own frame with its teeth up, lies on the bed. */
    public Placement placement() {
        RowShape shape = part.shape();
        boolean down = shape.side() == Side.RIDER;
        return new Placement(factorX, factorY, shape.startMm(), down ? shape.form().addendumMm() : shape.backMm(), down);
    }

    /** The outline of the side view at the edges of the face, in the row's own frame with its teeth up. */
    public Outline sideView() {
        return part.shape().teethUp();
    }

    @Override
    public String name() {
        return part.name();
    }

    @Override
    public Extent extent() {
        RowShape shape = part.shape();
        return new Extent((shape.endMm() - shape.startMm()) * factorX,
                (shape.form().addendumMm() - shape.backMm()) * factorY, part.faceMm());
    }

    @Override
    public double volumeMm3() {
        RowShape shape = part.shape();
        RowShape one = new RowShape(shape.side(), shape.form(), shape.pitchFm(), 1, shape.bodyMm(), 0);
        double view = shape.teeth() * one.outline().areaMm2() + shape.leanMm() * shape.bodyMm();
        double holes = plan.holes().stream().mapToDouble(Outline::areaMm2).sum();
        double marks = plan.pockets().stream().mapToDouble(Pocket::areaMm2).sum();
        return factorX * factorY * ((view - holes) * part.faceMm() - marks * depthMm());
    }

    @Override
    public void send(TriangleSink sink) {
        Extruder extruder = new Extruder(sink, placement(), part.faceMm(), depthMm());
        RowPieces pieces = new RowPieces(part.shape(), plan, extruder);
        int teeth = part.shape().teeth();
        for (int from = 0; from < teeth && sink.goesOn((double) from / teeth);) {
            int to = Math.min(from + TEETH_A_PIECE, teeth);
            while (to < teeth && !pieces.canCutAfter(to - 1)) {
                to++;
            }
            pieces.send(from, to);
            from = to;
        }
    }

    private double depthMm() {
        return Math.min(DEPTH_MM, part.faceMm() / 4);
    }
}
