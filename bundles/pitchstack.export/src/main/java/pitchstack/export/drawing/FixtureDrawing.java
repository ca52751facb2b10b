// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pitchstack.analysis.Quantities;
import pitchstack.core.geometry.FormProblem;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.QuantityException;
import pitchstack.export.drawing.DrawingAnswer.Drawn;
import pitchstack.export.drawing.DrawingAnswer.Refused;

/**
 * Composes the fixture drawing of a positioner: side view, details, tooth forms, stage table, notes, cautions and title
 * block, on the sheet asked for or the smallest on which everything has its place.
 */
public final class FixtureDrawing {
    /** How high the stack itself may come out in its side view, the largest first, as parts of the sheet's height. */
    private static final List<Double> VIEW_HEIGHTS = List.of(0.22, 0.16, 0.12, 0.08, 0.05);
    /** How wide a detail may be. */
    private static final List<Double> DETAIL_WIDTHS = List.of(176.0, 150.0, 125.0, 105.0, 90.0, 80.0, 70.0);

    private final DrawingRequest request;
    private final Style style;
    private final List<AxisView> axes = new ArrayList<>();
    private final Optional<String> problem;
    private final TitleFields fields;
    private final List<Part> words;
    private final Part bar;
    private final List<Part> sections;
    private final Map<Double, Optional<List<Part>>> detailsByWidth = new TreeMap<>();

    private FixtureDrawing(DrawingRequest request, TextMeasure measure) {
        this.request = request;
        style = new Style(measure, Quantities.unit(request.positioner()) == LengthUnit.INCH ? Convention.ASME : Convention.ISO);
        request.axes().forEach(axis -> axes.add(AxisViews.of(request.positioner(),
                request.positioner().getAxes().indexOf(axis.axis()) + 1, request.axes().size() > 1, axis)));
        problem = axes.stream().flatMap(axis -> axis.stages().stream()).flatMap(stage -> FormProblem.of(stage.tooth())
                .map(sentence -> "“" + stage.name() + "” cannot be drawn: " + sentence).stream()).findFirst();
        fields = fields();
        words = words();
        bar = CheckBar.of(style);
        sections = problem.isPresent() ? List.of() : axes.stream().flatMap(axis -> sections(axis).stream()).toList();
    }

    /**
     * The drawing.
     *
     * @param measure the letters of the file that it is written to
     */
    public static DrawingAnswer of(DrawingRequest request, TextMeasure measure) {
        try {
            return new FixtureDrawing(request, measure).draw();
        } catch (QuantityException unreadable) {
            return new Refused(unreadable.getMessage());
        }
    }

    private DrawingAnswer draw() {
        if (problem.isPresent()) {
            return new Refused(problem.get());
        }
        List<SheetSize> sheets = request.sheet().map(List::of).orElse(List.of(SheetSize.values()));
        for (SheetSize sheet : sheets) {
            Optional<Drawing> drawing = on(sheet, request.scale());
            if (drawing.isPresent()) {
                return new Drawn(drawing.get());
            }
        }
        return new Refused(whyNot());
    }

    /** What would fit: a larger sheet at the scale asked for, or else any scale on the sheet asked for, or else neither. */
    private String whyNot() {
        String wanted = request.scale().map(scale -> " at " + scale).orElse("");
        Optional<SheetSize> larger = Arrays.stream(SheetSize.values()).filter(sheet -> on(sheet, request.scale()).isPresent())
                .findFirst();
        String asked = request.sheet().map(sheet -> "This stack does not fit on " + sheet + wanted)
                .orElse("This stack does not fit on " + SheetSize.A1 + wanted + ", the largest sheet");
        if (larger.isPresent()) {
            return asked + "; " + larger.get() + " is large enough.";
        }
        Optional<SheetSize> atAnother = Arrays.stream(SheetSize.values())
                .filter(sheet -> on(sheet, Optional.empty()).isPresent()).findFirst();
        return asked + (atAnother.isPresent() && request.scale().isPresent()
                ? "; leave the scale to the program, which finds one that fits on " + atAnother.get() + "."
                : "; draw one axis at a time, or shorten its names and notes.");
    }

    private Optional<Drawing> on(SheetSize sheet, Optional<StandardScale> scale) {
        for (double viewHeight : VIEW_HEIGHTS) {
            Optional<List<Part>> views = all(axes.stream().map(axis -> SideView.of(axis, scale, Layout.width(sheet),
                    scale.isPresent() ? sheet.heightMm() : viewHeight * sheet.heightMm() / axes.size(), style)));
            if (views.isPresent()) {
                for (double detailWidth : DETAIL_WIDTHS) {
                    Optional<Drawing> drawing = on(sheet, views.get(), details(detailWidth));
                    if (drawing.isPresent()) {
                        return drawing;
                    }
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Drawing> on(SheetSize sheet, List<Part> views, Optional<List<Part>> details) {
        return details.flatMap(some -> Layout.of(sheet, column(sheet), bar, views, List.of(some, sections)))
                .map(parts -> new Drawing(sheet, title(), fields.creator(), request.date(),
                        Stream.concat(Stream.of(Frame.of(sheet, style)), parts.stream()).toList()));
    }

    private Optional<List<Part>> details(double width) {
        return detailsByWidth.computeIfAbsent(width, wide -> all(axes.stream().flatMap(axis -> axis.stages().stream()
                .map(stage -> PairDetail.of(axis, stage, wide, style)))));
    }

    private List<Part> column(SheetSize sheet) {
        List<Part> column = new ArrayList<>(words);
        column.add(0, TitleBlockPart.of(fields, sheet, request.projection(), style));
        return column;
    }

    /** What stands above the title block, from there upwards. */
    private List<Part> words() {
        double width = TitleBlockPart.WIDTH - 2 * Layout.GAP;
        return List.of(Notes.cautions(width, style), Notes.notes(request.positioner(), axes, width, style),
                StageTable.of(axes, style));
    }

    private TitleFields fields() {
        String names = axes.stream().map(AxisView::name).map(name -> "“" + name + "”").collect(Collectors.joining(", "));
        return TitleFields.of(request.positioner(), (axes.size() == 1 ? "axis " : "axes ") + names,
                request.scale().map(StandardScale::toString).orElse("as shown"), units(), request.date());
    }

    /** Lengths along rotary axes are angles. */
    private String units() {
        String linear = axes.stream().allMatch(AxisView::isRotary) ? "" : style.convention().unit().symbol();
        return axes.stream().noneMatch(AxisView::isRotary) ? linear : linear.isEmpty() ? "°" : linear + ", °";
    }

    private String title() {
        String title = request.positioner().getTitle();
        String type = TitleFields.DOCUMENT_TYPE;
        return title == null || title.isBlank() ? type : title + ", " + type.toLowerCase(Locale.ROOT);
    }

    /** A section for each form of teeth; on a rotary axis they differ in nothing that the file gives. */
    private List<Part> sections(AxisView axis) {
        List<Part> sections = new ArrayList<>();
        List<StageView> left = new ArrayList<>(axis.stages());
        while (!left.isEmpty()) {
            StageView first = left.get(0);
            List<StageView> same = left.stream()
                    .filter(stage -> axis.isRotary() || stage.tooth().equals(first.tooth())).toList();
            sections.add(ToothSection.of(axis, same, style));
            left.removeAll(same);
        }
        return sections;
    }

    private static Optional<List<Part>> all(Stream<Optional<Part>> parts) {
        List<Optional<Part>> some = parts.toList();
        return some.stream().allMatch(Optional::isPresent) ? Optional.of(some.stream().map(Optional::get).toList())
                : Optional.empty();
    }
}
