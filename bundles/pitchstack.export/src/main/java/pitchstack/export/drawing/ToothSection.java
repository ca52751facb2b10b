// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import pitchstack.model.ToothForm;
import pitchstack.model.ToothPattern;

/** One tooth cut along the travel, much enlarged, with the sizes of its form. */
final class ToothSection {
    /** Paper for one pitch, at most. */
    private static final double LARGEST_PITCH = 26;
    private static final double BEHIND = 0.45;
    private static final double SPACING = 2;
    private static final double ARC = 9;

    private final AxisView axis;
    private final List<StageView> stages;
    private final Style style;
    private final ToothSize tooth;
    private final StandardScale scale;
    private final Pencil pencil;
    private final Dimensions dimensions;

    private ToothSection(AxisView axis, List<StageView> stages, Style style) {
        this.axis = axis;
        this.stages = stages;
        this.style = style;
        tooth = stages.get(0).base().tooth();
        scale = StandardScale.fitting(tooth.pitch(), LARGEST_PITCH)
                .orElse(StandardScale.ALL.get(StandardScale.ALL.size() - 1));
        pencil = style.pencil();
        dimensions = new Dimensions(pencil, style.convention());
    }

    /**
     * The section.
     *
     * @param stages those whose teeth have this form, at least one
     */
    static Part of(AxisView axis, List<StageView> stages, Style style) {
        return new ToothSection(axis, stages, style).draw();
    }

    private double paper(double mm) {
        return mm * scale.factor();
    }

    private Part draw() {
        List<Point> edge = edge();
        double half = paper(tooth.pitch()) * 0.75;
        double bottom = -paper(tooth.dedendum() + BEHIND * tooth.depth());
        List<Point> face = new ArrayList<>(edge);
        face.add(new Point(half, bottom));
        face.add(new Point(-half, bottom));
        pencil.marks(Hatching.of(face, SPACING), 0, 0);
        pencil.path(Pen.OUTLINE, edge, false);
        pencil.line(Pen.THIN, -half, bottom, half, bottom);
        pencil.line(Pen.THIN, -half, bottom, -half, edge.get(0).y());
        pencil.line(Pen.THIN, half, bottom, half, edge.get(edge.size() - 1).y());
        pencil.line(Pen.CHAIN, -half - 2, 0, half + 2, 0);
        sizes(half);
        angle();
        captions(bottom);
        return pencil.part("section-" + axis.number() + "-" + stages.get(0).number());
    }

    /** A tooth with a gap and a quarter of a pitch on either side. */
    private List<Point> edge() {
        double half = 0.75 * tooth.pitch();
        RowView row = new RowView(-1.5 * tooth.pitch(), 0, 1, 3, tooth, 0);
        return RowPencil.edge(row, -half, half).stream().map(point -> new Point(paper(point.x()), paper(point.y()))).toList();
    }

    private void sizes(double half) {
        double tip = paper(tooth.addendum());
        double root = -paper(tooth.dedendum());
        double pitch = paper(tooth.pitch());
        Convention convention = style.convention();
        if (axis.isRotary()) {
            return;
        }
        dimensions.upright(root, tip, half, paper(tooth.tipHalf()), half + Dimensions.STEP, convention.rounded(tooth.depth(), 3));
        dimensions.upright(0, tip, -half - 2, -paper(tooth.tipHalf()), -half - Dimensions.STEP,
                convention.rounded(tooth.addendum(), 3));
        dimensions.along(-pitch / 4, pitch / 4, 0, 0, tip + 2 * Dimensions.STEP,
                convention.rounded(tooth.pitch() / 2, 4));
        dimensions.along(-paper(tooth.tipHalf()), paper(tooth.tipHalf()), tip, tip, tip + Dimensions.STEP,
                convention.rounded(2 * tooth.tipHalf(), 3));
    }

    /** The flank angle, between the right flank's pitch point upwards and the flank. */
    private void angle() {
        double x = paper(tooth.pitch()) / 4;
        Point foot = new Point(x, 0);
        double flank = 90 + tooth.flankDeg();
        pencil.line(Pen.THIN, x, 0, x, ARC + 2);
        pencil.arc(Pen.THIN, foot, ARC, 90, flank);
        pencil.text(Convention.ISO.rounded(tooth.flankDeg(), 3) + "°", x + 1.5, ARC - 1, Pencil.TEXT, Anchor.START);
    }

    private void captions(double bottom) {
        Box drawn = pencil.extent();
        String numbers = stages.stream().map(stage -> String.valueOf(stage.number())).collect(Collectors.joining(", "));
        String heading = "Tooth form, " + (stages.size() == 1 ? "stage " : "stages ") + numbers + ", "
                + (axis.isRotary() ? "not to scale" : scale.toString());
        pencil.text(heading, drawn.left(), drawn.top() + Pencil.HEADING, Pencil.HEADING, Anchor.START);
        double y = bottom - 2 * Pencil.TEXT;
        for (String line : facts()) {
            pencil.text(line, drawn.left(), y, Pencil.TEXT, Anchor.START);
            y -= Pencil.TEXT * Pencil.LINE_PITCH;
        }
    }

    private List<String> facts() {
        ToothForm form = stages.get(0).stage().getToothForm();
        List<String> facts = new ArrayList<>();
        if (form == null) {
            facts.add("Form not stated: drawn as ISO 53 type A.");
        } else if (form.getPattern() == ToothPattern.HERRINGBONE) {
            facts.add("Herringbone, " + Convention.ISO.rounded(form.getHerringboneAngleDeg(), 3) + "° either way.");
        } else {
            facts.add("Straight teeth.");
        }
        return facts;
    }
}
