// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.export;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import pitchstack.edit.Session;
import pitchstack.model.Positioner;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Background;
import pitchstack.ui.views.Busy;
import pitchstack.ui.views.export.ExportWork.None;
import pitchstack.ui.views.export.ExportWork.Ready;

/** All choices on the left, the thing as it will look on the right, and below what is worth knowing of it. */
public abstract class ExportPage extends WizardPage {
    private static final int PREVIEW_WIDTH = 560;
    private static final int PREVIEW_HEIGHT = 400;
    /** Four lines; more are scrolled. */
    private static final int REMARKS_HEIGHT = 72;

    private final Session session;
    private final String behind;
    private final Positioner positioner;
    private Background background;
    private Busy busy;
    private FileFields file;
    private SheetCanvas preview;
    private Text remarks;
    private Label size;
    private ExportWork work;

    /**
     * @param title of the page
     * @param session of the stack
     * @param behind what the usual name of a file has behind that of the stack's; may be empty
     */
    protected ExportPage(String title, Session session, String behind) {
        super(title, title, null);
        this.session = session;
        this.behind = behind;
        positioner = EcoreUtil.copy(session.positioner());
        setPageComplete(false);
    }

    /** A copy of the device, so that it may be read away from the interface thread. */
    protected final Positioner positioner() {
        return positioner;
    }

    /** The stack that is exported. */
    protected final Session session() {
        return session;
    }

    @Override
    public final void createControl(Composite parent) {
        Composite page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(12, 12).spacing(16, 8).applyTo(page);
        background = new Background(page.getDisplay(), share -> busy.show(share));
        Composite fields = new Composite(page, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(12, 8).applyTo(fields);
        GridDataFactory.fillDefaults().grab(false, true).applyTo(fields);
        fill(fields);
        file = new FileFields(fields, session, behind, this::check);
        preview = new SheetCanvas(page);
        GridDataFactory.fillDefaults().grab(true, true).hint(PREVIEW_WIDTH, PREVIEW_HEIGHT).applyTo(preview.control());
        remarks = new Text(page, SWT.BORDER | SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        Accessibles.name(remarks, "Worth knowing");
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(PREVIEW_WIDTH, REMARKS_HEIGHT).exclude(true)
                .applyTo(remarks);
        remarks.setVisible(false);
        size = new Label(page, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(size);
        busy = new Busy(page, 2, "Working out the file", this::stop);
        setControl(page);
        page.addListener(SWT.Dispose, event -> background.forget());
        chosen();
    }

    /** Makes the fields for the choices, in two columns, with {@link #combo}. */
    protected abstract void fill(Composite fields);

    /** What to do for the choices as they stand; asked for anew after each change. */
    protected abstract ExportTask task();

    /** What the page says while nothing is wrong. */
    protected abstract String hint();

    /** Keeps the choices for the next time; called once the file is written. */
    protected abstract void keep();

    /** A choice of one of several. */
    protected final Combo combo(Composite fields, String label, List<String> items, int chosen) {
        new Label(fields, SWT.NONE).setText(label);
        Combo combo = new Combo(fields, SWT.READ_ONLY);
        combo.setItems(items.toArray(String[]::new));
        combo.select(chosen);
        Accessibles.name(combo, label.replace("&", ""));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(combo);
        combo.addListener(SWT.Selection, event -> chosen());
        return combo;
    }

    private void chosen() {
        ExportTask task = task();
        file.end(task.ending());
        work = null;
        check();
        background.ask(getTitle(), task.work(), this::done);
    }

    private void stop() {
        background.forget();
        done(Optional.of(new None("This was stopped; make another choice to begin again.")));
    }

    private void done(Optional<ExportWork> result) {
        busy.hide();
        work = result.orElse(new None("This failed; the log says why."));
        if (work instanceof Ready ready) {
            preview.show(ready.picture(), ready.shown());
            size.setText(ready.words() + ", " + size(ready.bytes().length));
            tell(ready.remarks());
        } else {
            preview.clear("nothing");
            size.setText("");
            tell(List.of());
        }
        check();
    }

    private static String size(int bytes) {
        return bytes < 1000 ? bytes + " bytes" : (bytes + 500) / 1000 + " kB";
    }

    private void tell(List<String> sentences) {
        remarks.setText(String.join("\n", sentences));
        ((GridData) remarks.getLayoutData()).exclude = sentences.isEmpty();
        remarks.setVisible(!sentences.isEmpty());
        remarks.getParent().layout();
    }

    private void check() {
        Optional<String> complaint = work instanceof None none ? Optional.of(none.sentence()) : file.complaint();
        setErrorMessage(complaint.orElse(null));
        setMessage(hint());
        setPageComplete(complaint.isEmpty() && work instanceof Ready);
    }

    /** The bytes to write, once the page is complete. */
    final byte[] bytes() {
        return ((Ready) work).bytes();
    }

    /** Where to write them. */
    final Path file() {
        return file.path();
    }
}
