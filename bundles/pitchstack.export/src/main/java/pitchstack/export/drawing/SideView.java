// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import pitchstack.export.drawing.BrokenLine.Stretch;

/** The whole stack of an axis from the side, with what is measured on it as a whole. */
final class SideView {
    /** Paper beside the view: numbers of the stages on the left, the height on the right. */
    static final double BESIDE = 34;
    private static final double LABEL_GAP = 1.2;
    private static final double BALLOON_STEP = 7.4;
    private static final double BALLOON_OUT = 12;
    /** In pitches: what is shown on either side of an end. */
    private static final double MARGIN = 1.6;
    /** Teeth larger than this on paper belong into a detail. */
    private static final double LARGEST_PITCH = 5;

    private final AxisView axis;
    private final BrokenLine line;
    private final StandardScale scale;
    private final Style style;
    private final Pencil pencil;
    private final RowPencil rows;
    private final Dimensions dimensions;

    private SideView(AxisView axis, StandardScale scale, BrokenLine line, Style style) {
        this.axis = axis;
        this.line = line;
        this.scale = scale;
        this.style = style;
        pencil = style.pencil();
        rows = new RowPencil(pencil, line, axis.rows());
        dimensions = new Dimensions(pencil, style.convention());
    }

    /**
     * The view at the largest scale that fits.
     *
     * @param wanted the only scale that may be taken, or nothing
     * @param widthMm how much paper there is for everything
     * @param heightMm how high the stack itself may come out
     */
    static Optional<Part> of(AxisView axis, Optional<StandardScale> wanted, double widthMm, double heightMm, Style style) {
        List<StandardScale> scales = wanted.map(List::of).orElse(StandardScale.ALL);
        double pitch = widestPitch(axis);
        return Stream.of(true, false).flatMap(whole -> scales.stream()
                .filter(scale -> wanted.isPresent() || pitch * scale.factor() <= LARGEST_PITCH)
                .filter(scale -> axis.height() * scale.factor() <= heightMm)
                .flatMap(scale -> line(axis, scale, widthMm - BESIDE, whole).stream()
                        .map(line -> new SideView(axis, scale, line, style).draw())))
                .filter(part -> part.box().width() <= widthMm).findFirst();
    }

    /** What of the axis is drawn: at least every end, and if wanted everything that stands on the base. */
    private static Optional<BrokenLine> line(AxisView axis, StandardScale scale, double paper, boolean whole) {
        double margin = MARGIN * widestPitch(axis);
        double low = axis.low().x() - axis.reference();
        double high = axis.high().x() - axis.reference();
        RowView carriage = axis.carriage();
        List<RowView> standing = Stream.concat(axis.rows().stream().skip(1),
                Stream.of(carriage.moved(low), carriage.moved(high))).toList();
        Stream<Stretch> interesting = whole
                ? standing.stream().map(row -> new Stretch(row.left(), row.right()))
                : standing.stream().flatMap(row -> Stream.of(point(row.left()), point(row.right())));
        double[] ends = Stream.concat(Stream.of(axis.lowest()), standing.stream())
                .flatMapToDouble(row -> DoubleStream.of(row.left(), row.right())).sorted().toArray();
        List<Stretch> all = Stream.concat(interesting, Stream.of(point(axis.lowest().left()), point(axis.lowest().right()),
                point(0), point(axis.low().x()), point(axis.high().x()))).toList();
        return BrokenLine.fitting(new Stretch(ends[0], ends[ends.length - 1]), all, margin, scale.factor(), paper);
    }

    private static double widestPitch(AxisView axis) {
        return axis.stages().stream().mapToDouble(stage -> stage.base().tooth().pitchMm()).max().orElseThrow();
    }

    private static Stretch point(double x) {
        return new Stretch(x, x);
    }

    private Part draw() {
        axis.stages().forEach(stage -> rows.mesh(stage.base(), stage.rider()));
        if (!rows.isToothed()) {
            axis.stages().forEach(stage -> rows.pitchLine(stage.base()));
        }
        axis.rows().forEach(rows::holes);
        rows.breaks(axis.rows());
        travel();
        double end = Math.max(line.width() + 3, pencil.extent().right());
        datum();
        overall(end);
        balloons();
        Box drawn = pencil.extent();
        pencil.text(heading(), drawn.left(), drawn.top() + Pencil.HEADING, Pencil.HEADING, Anchor.START);
        return pencil.part("view-" + axis.number());
    }

    private String heading() {
        String broken = line.pieces().size() > 1 ? ", broken" : "";
        String unrolled = axis.isRotary() ? "unrolled" + broken + ", lengths in degrees, 1° drawn as " + Convention.ISO.rounded(scale.factor(), 4)
                + " mm" : "side view" + broken + ", " + scale;
        return style.measure().printable(axis.name()) + ": " + unrolled;
    }

    /** The travel of the carriage's reference, with the carriage dashed where it can go. */
    private void travel() {
        if (axis.isEndless()) {
            return;
        }
        double top = rows.y(axis.height());
        for (AxisView.Travel end : List.of(axis.low(), axis.high())) {
            double away = end.x() - axis.reference();
            if (Math.abs(away) * line.factor() > Dimensions.STEP) {
                phantom(axis.carriage().moved(away));
            }
        }
        double low = rows.x(axis.low().x());
        double high = rows.x(axis.high().x());
        String text = "travel " + style.number(axis, axis.high().count() - axis.low().count()) + " ("
                + style.number(axis, axis.low().count()) + " to " + style.number(axis, axis.high().count()) + ")";
        dimensions.along(low, high, top, top, top + Dimensions.STEP + 1, text);
    }

    private void phantom(RowView carriage) {
        pencil.box(Pen.PHANTOM, new Box(rows.x(carriage.left()), rows.y(carriage.root()), rows.x(carriage.right()),
                rows.y(carriage.back())));
    }

    /** The datum, and where the first tooth of the base stands from it. */
    private void datum() {
        double x = rows.x(0);
        double first = rows.x(axis.lowest().centre(0));
        double y = -Dimensions.STEP - Pencil.TEXT * 2;
        pencil.line(Pen.CHAIN, x, y - 2, x, rows.y(axis.height()) + 2);
        label("datum: position " + style.number(axis, axis.spec().datum()), x, first);
        long fromDatum = Math.abs(2L * axis.stages().get(0).spec().rows().start()
                + axis.stages().get(0).spec().rows().rider().teeth()) * axis.stages().get(0).spec().nominalPitch() / 2;
        if (fromDatum != 0) {
            dimensions.along(Math.min(first, x), Math.max(first, x), 0, 0, y, style.number(axis, fromDatum));
        }
    }

    /** Beside the datum where that keeps clear of the extension lines, else beyond them with a line to it. */
    private void label(String text, double x, double first) {
        double end = rows.x(axis.lowest().right());
        double[] lines = {first, rows.x(axis.lowest().left()), end};
        double needed = pencil.width(text, Pencil.TEXT) + 2 * LABEL_GAP;
        double y = -Pencil.TEXT - 2;
        if (Arrays.stream(lines).filter(line -> line > x).allMatch(line -> line - x >= needed)) {
            pencil.text(text, x + LABEL_GAP, y, Pencil.TEXT, Anchor.START);
        } else if (Arrays.stream(lines).filter(line -> line < x).allMatch(line -> x - line >= needed)) {
            pencil.text(text, x - LABEL_GAP, y, Pencil.TEXT, Anchor.END);
        } else {
            double beyond = Math.max(x, end) + 2 * LABEL_GAP;
            pencil.line(Pen.THIN, x, y + Pencil.TEXT / 2, beyond, y + Pencil.TEXT / 2);
            pencil.text(text, beyond + LABEL_GAP, y, Pencil.TEXT, Anchor.START);
        }
    }

    /** @param end to the right of which the height keeps clear of everything above the base */
    private void overall(double end) {
        StageView lowest = axis.stages().get(0);
        long length = lowest.spec().nominalPitch() * lowest.base().teeth();
        dimensions.along(rows.x(lowest.base().left()), rows.x(lowest.base().right()), 0, 0,
                -2 * Dimensions.STEP - Pencil.TEXT * 2, style.number(axis, length));
        if (axis.isThicknessStated() && !axis.isRotary()) {
            double away = Math.max(0, axis.high().x() - axis.reference());
            dimensions.upright(0, rows.y(axis.height()), rows.x(axis.lowest().right()),
                    rows.x(axis.carriage().right() + away), end + Dimensions.STEP,
                    style.convention().rounded(axis.height(), 2));
        }
    }

    /** The numbers of the stages on the left, each with a line to where its rows meet. */
    private void balloons() {
        double least = Double.NEGATIVE_INFINITY;
        for (StageView stage : axis.stages()) {
            double meeting = rows.y(stage.base().pitchLine());
            double y = Math.max(least, meeting);
            least = y + BALLOON_STEP;
            double x = -BALLOON_OUT;
            double end = Math.min(rows.x(stage.base().left()), rows.x(stage.rider().left()));
            double radius = pencil.balloon(stage.label(), x, y);
            pencil.path(Pen.THIN, List.of(new Point(x + radius, y), new Point(-3, meeting), new Point(end, meeting)), false);
            pencil.circle(Pen.THIN, end, meeting, 0.3);
        }
    }
}
