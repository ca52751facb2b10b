// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import pitchstack.core.geometry.ToothForm;
import pitchstack.model.Row;
import pitchstack.model.ToothPattern;
import pitchstack.model.ToothProfile;

/** One tooth cut along the travel, much enlarged, with the sizes of its form. */
final class ToothSection {
    /** Paper for one pitch, at most. */
    private static final double LARGEST_PITCH = 36;
    private static final double BEHIND = 0.45;
    private static final double SPACING = 2;
    /** How wide the words below may be where the section is narrower. */
    private static final double WIDTH = 62;
    private static final double SAG = 0.01;

    private final AxisView axis;
    private final List<StageView> stages;
    private final Style style;
    private final ToothForm tooth;
    private final StandardScale scale;
    private final Pencil pencil;
    private final Dimensions dimensions;

    private ToothSection(AxisView axis, List<StageView> stages, Style style) {
        this.axis = axis;
        this.stages = stages;
        this.style = style;
        tooth = stages.get(0).tooth();
        scale = StandardScale.fitting(tooth.pitchMm(), LARGEST_PITCH)
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
        double half = paper(tooth.pitchMm()) * 0.75;
        double bottom = paper(tooth.floorMm() - BEHIND * tooth.depthMm());
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
        double half = 0.75 * tooth.pitchMm();
        RowView row = new RowView(-1.5 * tooth.pitchMm(), 0, 1, 3, tooth, 0);
        return RowPencil.edge(row, -half, half, SAG / scale.factor()).stream()
                .map(point -> new Point(paper(point.x()), paper(point.y()))).toList();
    }

    private void sizes(double half) {
        if (axis.isRotary()) {
            return;
        }
        double tip = paper(tooth.addendumMm());
        double root = -paper(tooth.dedendumMm());
        double land = paper(tooth.tipLandMm()) / 2;
        Convention convention = style.convention();
        dimensions.upright(root, tip, half, land, half + Dimensions.STEP, convention.rounded(tooth.depthMm(), 3));
        dimensions.upright(0, tip, -half - 2, -land, -half - Dimensions.STEP, convention.rounded(tooth.addendumMm(), 3));
        dimensions.along(-land, land, tip, tip, tip + Dimensions.STEP, convention.rounded(tooth.tipLandMm(), 3));
        double quarter = paper(tooth.pitchMm()) / 4;
        dimensions.along(-quarter, quarter, 0, 0, tip + 2 * Dimensions.STEP, convention.rounded(tooth.pitchMm() / 2, 4));
    }

    /** The angle of the right flank from the line across the row, which runs up through its pitch point. */
    private void angle() {
        double tip = paper(tooth.addendumMm());
        double radius = 0.75 * tip;
        Point foot = new Point(paper(tooth.pitchMm()) / 4, 0);
        pencil.line(Pen.THIN, foot.x(), 0, foot.x(), tip);
        pencil.arc(Pen.THIN, foot, radius, 90, 90 + tooth.flankAngleDeg());
        pencil.text(Convention.ISO.rounded(tooth.flankAngleDeg(), 3) + "°", foot.x() + 1.2,
                Math.max(0.8, tip - Pencil.TEXT - 1.2), Pencil.TEXT, Anchor.START);
    }

    private void captions(double bottom) {
        Box drawn = pencil.extent();
        String numbers = stages.stream().map(StageView::label).collect(Collectors.joining(", "));
        String heading = "Tooth form, " + (stages.size() == 1 ? "stage " : "stages ") + numbers + ", "
                + (axis.isRotary() ? "not to scale" : scale.toString());
        pencil.text(heading, drawn.left(), drawn.top() + Pencil.HEADING, Pencil.HEADING, Anchor.START);
        double y = bottom - 2 * Pencil.TEXT;
        for (String line : TextLines.wrapped(facts(), Pencil.TEXT, Math.max(WIDTH, drawn.width()), style.measure())) {
            pencil.text(line, drawn.left(), y, Pencil.TEXT, Anchor.START);
            y -= Pencil.TEXT * Pencil.LINE_PITCH;
        }
    }

    /** What cannot be seen from the sizes. */
    private String facts() {
        pitchstack.model.ToothForm form = stages.get(0).stage().getToothForm();
        List<String> facts = new ArrayList<>();
        facts.add(profile(form));
        if (form != null && form.getPattern() == ToothPattern.HERRINGBONE) {
            facts.add("herringbone, " + Convention.ISO.rounded(form.getHerringboneAngleDeg(), 3) + "° either way");
        }
        if (!axis.isRotary()) {
            add(facts, "fillet R ", tooth.filletMm());
            add(facts, "tip relief ", tooth.tipReliefMm());
            add(facts, "well ", tooth.wellMm());
            add(facts, "slot ", tooth.slotMm());
        }
        facts.add(faces());
        return String.join(", ", facts) + '.';
    }

    /** How wide the rows are across the travel; by row where they differ. */
    private String faces() {
        Map<String, List<String>> faces = new LinkedHashMap<>();
        for (StageView stage : stages) {
            faces.computeIfAbsent(face(stage.stage().getBaseRow()), face -> new ArrayList<>()).add(stage.label() + " base");
            faces.computeIfAbsent(face(stage.stage().getRiderRow()), face -> new ArrayList<>()).add(stage.label() + " rider");
        }
        return "face width " + (faces.size() == 1 ? faces.keySet().iterator().next()
                : faces.entrySet().stream().map(face -> face.getKey() + " (" + String.join(", ", face.getValue()) + ")")
                        .collect(Collectors.joining(", ")));
    }

    private String face(Row row) {
        double mm = style.lengths().mm("face width", row.getFaceWidth(), 0);
        String unit = axis.isRotary() ? ' ' + style.convention().unit().symbol() : "";
        return mm > 0 ? style.convention().rounded(mm, 3) + unit : "not stated";
    }

    private static String profile(pitchstack.model.ToothForm form) {
        if (form == null) {
            return "Form not stated: drawn as ISO 53 type A";
        }
        return form.getProfile() == ToothProfile.OWN ? "Own form" : form.getProfile().getLiteral().replace("53 ", "53 type ");
    }

    private void add(List<String> facts, String what, double mm) {
        if (mm > 0) {
            facts.add(what + style.convention().rounded(mm, 3));
        }
    }
}
