// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchstack.core.geometry.Clamping;
import pitchstack.core.geometry.FormProblem;
import pitchstack.core.geometry.Outline;
import pitchstack.core.geometry.RowShape;

/**
 * Where holes and marks of a row come, as seen with its teeth up.
 *
 * @param holes outlines of holes, anticlockwise
 * @param pockets what is engraved
 * @param remarks what could not be placed
 */
public record RowPlan(List<Outline> holes, List<Pocket> pockets, List<Remark> remarks) {
    /** Copies the lists. */
    public RowPlan {
        holes = List.copyOf(holes);
        pockets = List.copyOf(pockets);
        remarks = List.copyOf(remarks);
    }

    /** Plans a row that has no {@linkplain #problem problem}. */
    public static RowPlan of(RowPart part) {
        double margin = RowMarks.margin(part);
        Clamping clamping = part.clamping();
        double holes = clamping.isGiven() ? clamping.diameterMm() + margin : 0;
        RowMarks marks = new RowMarks(part, part.shape().bodyMm() - holes - 2 * margin);
        List<Remark> remarks = new ArrayList<>(PrintRemarks.of(part.shape().form(), part.lineMm()));
        remarks.addAll(marks.remarks());
        double back = part.shape().backMm();
        boolean marked = !marks.pockets().isEmpty();
        double y = marked ? back + margin + clamping.diameterMm() / 2 : back + part.shape().bodyMm() / 2;
        return new RowPlan(clamping.isGiven() ? holes(part, y) : List.of(), marks.pockets(), remarks);
    }

    /** Holes stand evenly about the middle of the body. */
    private static List<Outline> holes(RowPart part, double y) {
        RowShape shape = part.shape();
        Clamping clamping = part.clamping();
        double middle = (shape.startMm() + shape.endMm()) / 2;
        int count = (int) Math.floor((room(part) - clamping.lengthMm()) / clamping.spacingMm()) + 1;
        List<Outline> holes = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            holes.add(clamping.outlineAt(middle + (2 * k - count + 1) * clamping.spacingMm() / 2, y));
        }
        return holes;
    }

    private static double room(RowPart part) {
        return part.shape().endMm() - part.shape().startMm() - 2 * RowMarks.margin(part);
    }

    /** Why a row cannot be made, in one sentence; empty where it can. */
    public static Optional<String> problem(RowPart part) {
        return FormProblem.of(part.shape().form()).or(() -> sizes(part)).or(() -> clamping(part));
    }

    private static Optional<String> sizes(RowPart part) {
        if (part.shape().teeth() < 1) {
            return Optional.of("The row has " + part.shape().teeth() + " teeth; it needs one at least.");
        }
        if (!(part.faceMm() > part.lineMm())) {
            return Optional.of("The face is " + Millimetres.of(part.faceMm()) + " wide; more than a printed line of "
                    + Millimetres.of(part.lineMm()) + " is needed.");
        }
        double body = part.shape().bodyMm();
        return body >= RowMarks.margin(part) ? Optional.empty() : Optional.of("The body is " + Millimetres.of(body)
                + " thick; two printed lines, " + Millimetres.of(RowMarks.margin(part)) + ", are the least.");
    }

    private static Optional<String> clamping(RowPart part) {
        Clamping clamping = part.clamping();
        if (!clamping.isGiven()) {
            return Optional.empty();
        }
        double needed = clamping.diameterMm() + 2 * RowMarks.margin(part);
        if (part.shape().bodyMm() < needed) {
            return Optional.of("A clamping hole of " + Millimetres.of(clamping.diameterMm()) + " needs a body of "
                    + Millimetres.of(needed) + "; this one is " + Millimetres.of(part.shape().bodyMm()) + " thick.");
        }
        double apart = clamping.lengthMm() + RowMarks.margin(part);
        if (clamping.spacingMm() < apart) {
            return Optional.of("Clamping holes stand " + Millimetres.of(clamping.spacingMm()) + " apart; "
                    + Millimetres.of(apart) + " or more leaves a wall between them.");
        }
        return room(part) >= clamping.lengthMm() ? Optional.empty() : Optional.of("A row of "
                + Millimetres.of(part.shape().endMm() - part.shape().startMm()) + " is too short for a clamping hole "
                + Millimetres.of(clamping.lengthMm()) + " long.");
    }
}
