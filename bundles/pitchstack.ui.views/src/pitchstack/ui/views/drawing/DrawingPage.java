// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.drawing;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.edit.Session;
import pitchstack.export.drawing.DrawingFormat;
import pitchstack.export.drawing.DrawingRequest;
import pitchstack.export.drawing.Projection;
import pitchstack.export.drawing.SheetSize;
import pitchstack.export.drawing.StandardScale;
import pitchstack.model.Positioner;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Background;
import pitchstack.ui.views.drawing.DrawingWork.None;
import pitchstack.ui.views.drawing.DrawingWork.Ready;

/** All choices on the left, the sheet as it will look on the right. */
final class DrawingPage extends WizardPage {
    private static final int PREVIEW_WIDTH = 560;
    private static final int PREVIEW_HEIGHT = 400;
    private static final List<String> FORMATS = List.of("PDF, for paper", "SVG, for the screen", "DXF R12, for drawing programs");
    private static final List<String> PROJECTIONS = List.of("First angle", "Third angle");

    private final Session session;
    /** A copy, so that it may be read away from the interface thread. */
    private final Positioner positioner;
    private final DrawingChoices before = DrawingChoices.last();
    private Background background;
    private Combo axis;
    private Combo format;
    private Combo sheet;
    private Combo scale;
    private Combo projection;
    private FileFields file;
    private SheetCanvas preview;
    private Label size;
    private DrawingWork work;

    DrawingPage(Session session) {
        super("drawing", "Fixture drawing", null);
        this.session = session;
        positioner = EcoreUtil.copy(session.positioner());
        setPageComplete(false);
    }

    @Override
    public void createControl(Composite parent) {
        Composite page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(12, 12).spacing(16, 8).applyTo(page);
        background = new Background(page.getDisplay(), share -> size.setText("Drawing…"));
        Composite fields = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(12, 8).applyTo(fields);
        GridDataFactory.fillDefaults().grab(false, true).applyTo(fields);
        choices(fields);
        file = new FileFields(fields, session, this::check);
        preview = new SheetCanvas(page);
        GridDataFactory.fillDefaults().grab(true, true).hint(PREVIEW_WIDTH, PREVIEW_HEIGHT).applyTo(preview.control());
        size = new Label(page, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(size);
        setControl(page);
        page.addListener(SWT.Dispose, event -> background.forget());
        chosen();
    }

    private void choices(Composite fields) {
        List<String> axes = positioner.getAxes().stream().map(one -> one.getName() == null ? "" : one.getName()).toList();
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
        return DrawingRequest.usual(positioner, analyses(), LocalDate.now()).projection();
    }

    private Combo combo(Composite fields, String label, List<String> items, int chosen) {
        new Label(fields, SWT.NONE).setText(label);
        Combo combo = new Combo(fields, SWT.READ_ONLY);
        combo.setItems(items.toArray(String[]::new));
        combo.select(chosen);
        Accessibles.name(combo, label.replace("&", ""));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(combo);
        combo.addListener(SWT.Selection, event -> chosen());
        return combo;
    }

    private List<AxisAnalysis> analyses() {
        return positioner.getAxes().stream().map(one -> AxisAnalysis.of(positioner, one)).toList();
    }

    /** The choices as they stand. */
    DrawingChoices choices() {
        return new DrawingChoices(DrawingFormat.values()[format.getSelectionIndex()],
                sheet.getSelectionIndex() == 0 ? Optional.empty() : Optional.of(SheetSize.values()[sheet.getSelectionIndex() - 1]),
                scale.getSelectionIndex() == 0 ? Optional.empty()
                        : Optional.of(StandardScale.ALL.get(scale.getSelectionIndex() - 1)),
                Optional.of(Projection.values()[projection.getSelectionIndex()]).filter(one -> one != usualProjection()));
    }

    /** Draws anew for other choices. */
    private void chosen() {
        DrawingChoices choices = choices();
        file.end(choices.format().ending());
        int number = axis.getSelectionIndex();
        work = null;
        check();
        background.ask("Drawing", progress -> {
            List<AxisAnalysis> all = analyses();
            List<AxisAnalysis> some = number == 0 ? all : List.of(all.get(number - 1));
            DrawingRequest usual = DrawingRequest.usual(positioner, some, LocalDate.now());
            return DrawingWork.of(new DrawingRequest(positioner, some, choices.sheet(), choices.scale(),
                    choices.projection().orElse(usual.projection()), usual.date()), choices.format());
        }, this::drawn);
    }

    private void drawn(Optional<DrawingWork> result) {
        work = result.orElse(new None("The drawing failed; the log says why."));
        if (work instanceof Ready ready) {
            preview.show(ready.picture(), "one sheet " + ready.sheet());
            size.setText("One sheet " + ready.sheet() + ", " + kilobytes(ready.bytes().length));
        } else {
            preview.clear("no drawing");
            size.setText("");
        }
        check();
    }

    private static String kilobytes(int bytes) {
        return (bytes + 500) / 1000 + " kB";
    }

    private void check() {
        Optional<String> complaint = work instanceof None none ? Optional.of(none.sentence()) : file.complaint();
        setErrorMessage(complaint.orElse(null));
        setMessage("Finish writes the sheet as it is shown here, all dimensions at 20 °C.");
        setPageComplete(complaint.isEmpty() && work instanceof Ready);
    }

    /** The bytes to write, once the page is complete. */
    byte[] bytes() {
        return ((Ready) work).bytes();
    }

    /** Where to write them. */
    Path file() {
        return file.path();
    }
}
