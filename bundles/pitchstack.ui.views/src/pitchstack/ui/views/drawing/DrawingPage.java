// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.drawing;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.edit.Session;
import pitchstack.export.drawing.DrawingFormat;
import pitchstack.export.drawing.DrawingRequest;
import pitchstack.export.drawing.Projection;
import pitchstack.export.drawing.SheetSize;
import pitchstack.export.drawing.StandardScale;
import pitchstack.ui.views.export.ExportPage;
import pitchstack.ui.views.export.ExportTask;

/** How a drawing is to look. */
final class DrawingPage extends ExportPage {
    private static final List<String> FORMATS = List.of("PDF, for paper", "SVG, for the screen", "DXF R12, for drawing programs");
    private static final List<String> PROJECTIONS = List.of("First angle", "Third angle");

    private final DrawingChoices before = DrawingChoices.last();
    private Combo axis;
    private Combo format;
    private Combo sheet;
    private Combo scale;
    private Combo projection;

    DrawingPage(Session session) {
        super("Fixture drawing", session, "");
    }

    @Override
    protected void fill(Composite fields) {
        List<String> axes = positioner().getAxes().stream().map(one -> one.getName() == null ? "" : one.getName()).toList();
        axis = combo(fields, "&Axis", Stream.concat(Stream.of(axes.size() == 1 ? "The only one" : "All on one sheet"),
                axes.size() == 1 ? Stream.empty() : axes.stream()).toList(), 0);
        format = combo(fields, "F&ormat", FORMATS, before.format().ordinal());
        sheet = combo(fields, "&Sheet", Stream.concat(Stream.of("Smallest that fits"),
                Stream.of(SheetSize.values()).map(Enum::name)).toList(), before.sheet().map(one -> one.ordinal() + 1).orElse(0));
        scale = combo(fields, "S&cale", Stream.concat(Stream.of("Largest that fits"),
                StandardScale.ALL.stream().map(StandardScale::toString)).toList(),
                before.scale().map(one -> StandardScale.ALL.indexOf(one) + 1).orElse(0));
        projection = combo(fields, "&Projection", PROJECTIONS, before.projection().orElseGet(this::usualProjection).ordinal());
    }

    private Projection usualProjection() {
        return DrawingRequest.usual(positioner(), analyses(), LocalDate.now()).projection();
    }

    private List<AxisAnalysis> analyses() {
        return positioner().getAxes().stream().map(one -> AxisAnalysis.of(positioner(), one)).toList();
    }

    /** The choices as they stand. */
    private DrawingChoices choices() {
        return new DrawingChoices(DrawingFormat.values()[format.getSelectionIndex()],
                sheet.getSelectionIndex() == 0 ? Optional.empty() : Optional.of(SheetSize.values()[sheet.getSelectionIndex() - 1]),
                scale.getSelectionIndex() == 0 ? Optional.empty()
                        : Optional.of(StandardScale.ALL.get(scale.getSelectionIndex() - 1)),
                Optional.of(Projection.values()[projection.getSelectionIndex()]).filter(one -> one != usualProjection()));
    }

    @Override
    protected ExportTask task() {
        DrawingChoices choices = choices();
        int number = axis.getSelectionIndex();
        return new ExportTask(choices.format().ending(), progress -> {
            List<AxisAnalysis> all = analyses();
            List<AxisAnalysis> some = number == 0 ? all : List.of(all.get(number - 1));
            DrawingRequest usual = DrawingRequest.usual(positioner(), some, LocalDate.now());
            return DrawingWork.of(new DrawingRequest(positioner(), some, choices.sheet(), choices.scale(),
                    choices.projection().orElse(usual.projection()), usual.date()), choices.format());
        });
    }

    @Override
    protected String hint() {
        return "Finish writes the sheet as it is shown here, all dimensions at 20 °C.";
    }

    @Override
    protected void keep() {
        choices().keep();
    }
}
