// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pitchstack.export.drawing.BrokenLine.Stretch;

/**
 * The two rows of a stage, enlarged and broken between their ends: how long each is, where the upper one stands on the
 * lower one, and the pitch over many teeth, since a single one cannot be measured well enough.
 */
final class PairDetail {
    private static final double MARGIN_PITCHES = 1.6;
    /** Teeth are not drawn wider than this; a detail is not a section. */
    private static final double LARGEST_PITCH = 14;
    private static final double SMALLEST_PITCH = 2;
    /** Of the solid part behind the teeth so much is shown, in depths of the teeth. */
    private static final double BACK = 1.1;
    /** What a caliper of a usual size spans (common practice, no source). */
    private static final double CALIPER = 300;
    private static final double SIDE = 3;

    private final AxisView axis;
    private final StageView stage;
    private final BrokenLine line;
    private final StandardScale scale;
    private final Style style;
    private final Pencil pencil;
    private final RowPencil rows;
    private final Dimensions dimensions;

    private PairDetail(AxisView axis, StageView stage, StandardScale scale, BrokenLine line, Style style) {
        this.axis = axis;
        this.stage = stage;
        this.line = line;
        this.scale = scale;
        this.style = style;
        pencil = style.pencil();
        rows = new RowPencil(pencil, line, List.of(stage.base(), stage.rider()));
        dimensions = new Dimensions(pencil, style.convention());
    }

    /** The detail at the largest scale that fits a width; nothing where teeth could not be told apart on it. */
    static Optional<Part> of(AxisView axis, StageView stage, double widthMm, Style style) {
        double pitch = stage.base().tooth().pitchMm();
        return StandardScale.ALL.stream().filter(scale -> pitch * scale.factor() <= LARGEST_PITCH)
                .filter(scale -> pitch * scale.factor() >= SMALLEST_PITCH)
                .flatMap(scale -> line(stage, scale, widthMm - 2 * SIDE).stream()
                        .map(line -> new PairDetail(axis, stage, scale, line, style).draw()))
                .filter(part -> part.box().width() <= widthMm).findFirst();
    }

    private static Optional<BrokenLine> line(StageView stage, StandardScale scale, double paper) {
        RowView base = stage.base();
        RowView rider = stage.rider();
        double left = Math.min(base.left(), rider.left());
        double right = Math.max(base.right(), rider.right());
        List<Stretch> ends = Stream.of(base.left(), base.right(), rider.left(), rider.right(),
                rider.flank(measuredTeeth(stage))).map(x -> new Stretch(x, x)).toList();
        return BrokenLine.fitting(new Stretch(left, right), ends, MARGIN_PITCHES * base.tooth().pitchMm(), scale.factor(), paper);
    }

    /** Over how many teeth the pitch is to be measured: all of the upper row, or tens of them up to a caliper's length. */
    static int measuredTeeth(StageView stage) {
        int all = stage.rider().teeth() - 1;
        int spanned = (int) (CALIPER / stage.rider().tooth().pitchMm());
        return all <= spanned ? all : spanned > 10 ? spanned / 10 * 10 : Math.max(1, spanned);
    }

    private Part draw() {
        RowView base = thin(stage.base());
        RowView rider = thin(stage.rider());
        rows.mesh(base, rider);
        rows.pitchLine(base);
        rows.breaks(List.of(base, rider));
        above(rider);
        below(base);
        Box drawn = pencil.extent();
        double y = drawn.top() + Pencil.HEADING + 1.2;
        double x = drawn.left() + Pencil.HEADING;
        double radius = pencil.balloon(stage.label(), x, y);
        String shown = axis.isRotary() ? "unrolled, in degrees" : scale.toString();
        double room = drawn.width() - 15 - style.measure().widthMm(shown, Pencil.HEADING);
        String name = TextLines.cut(stage.name(), Pencil.HEADING, Math.max(20, room), style.measure());
        pencil.text(name + ", " + shown, x + radius + 1.5, y - Pencil.HEADING / 2, Pencil.HEADING, Anchor.START);
        return pencil.part("detail-" + axis.number() + "-" + stage.number());
    }

    /** The row with no more behind its teeth than there is room for. */
    private static RowView thin(RowView row) {
        return new RowView(row.left(), row.pitchLine(), row.up(), row.teeth(), row.tooth(),
                Math.min(row.thickness(), BACK * row.tooth().depthMm()));
    }

    private void above(RowView rider) {
        double from = rows.y(rider.back());
        double y = from + Dimensions.STEP;
        int teeth = measuredTeeth(stage);
        double pitchLine = rows.y(rider.pitchLine());
        if (teeth > 0) {
            dimensions.along(rows.x(rider.flank(0)), rows.x(rider.flank(teeth)), pitchLine, pitchLine, y,
                    spanned(teeth, stage.spec().nominalPitch())
                            + PitchTolerance.of(axis, stage, teeth, style).map(tolerance -> " " + tolerance).orElse(""),
                    rows.x(rider.right()));
            y += Dimensions.STEP;
        }
        dimensions.along(rows.x(rider.left()), rows.x(rider.right()), from, from, y, teeth(rider));
    }

    private void below(RowView base) {
        double from = rows.y(base.back());
        double y = from - Dimensions.STEP;
        int start = stage.spec().rows().start();
        if (start > 0 && start < base.teeth()) {
            double pitchLine = rows.y(base.pitchLine());
            dimensions.along(rows.x(base.flank(0)), rows.x(base.flank(start)), pitchLine, pitchLine, y,
                    spanned(start, stage.spec().nominalPitch()));
            y -= Dimensions.STEP;
        }
        dimensions.along(rows.x(base.left()), rows.x(base.right()), from, from, y, teeth(base));
    }

    private String spanned(int teeth, long pitch) {
        return teeth + " × " + style.number(axis, pitch) + " = " + style.number(axis, pitch * teeth);
    }

    private String teeth(RowView row) {
        return row.teeth() + (row.teeth() == 1 ? " tooth: " : " teeth: ")
                + style.number(axis, stage.spec().nominalPitch() * row.teeth());
    }

}
