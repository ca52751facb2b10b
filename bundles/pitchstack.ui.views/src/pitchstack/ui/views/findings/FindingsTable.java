// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.findings;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;
import pitchstack.core.check.Severity;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Columns;

/** The findings as a table, and the sentence of the chosen one in full below it, where no column cuts it short. */
final class FindingsTable {
    private final Composite page;
    private final Table table;
    private final Columns columns;
    private final Label sentence;

    FindingsTable(Composite parent) {
        page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(page);
        table = new Table(page, SWT.MULTI | SWT.FULL_SELECTION);
        Accessibles.name(table, "Findings");
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table);
        columns = new Columns(table, 4, "Severity", "Where", "Value", "Limit", "Finding");
        sentence = new Label(page, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).indent(5, 0).hint(60, SWT.DEFAULT).applyTo(sentence);
        table.addListener(SWT.Selection, e -> showSentence());
    }

    /** The control to show. */
    Control control() {
        return page;
    }

    /** The table, for a context menu and the focus. */
    Table table() {
        return table;
    }

    /** @param listener called with the finding that is double-clicked or entered */
    void onOpen(Consumer<Found> listener) {
        table.addListener(SWT.DefaultSelection, e -> chosen().ifPresent(listener));
    }

    /** Lists findings. */
    void show(List<Found> all) {
        int at = table.getSelectionIndex();
        table.removeAll();
        for (Found found : all) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(new String[] {found.severity(), found.where(), found.finding().value(),
                    found.finding().limit(), found.finding().sentence()});
            item.setImage(image(found.finding().severity()));
            item.setData(found);
        }
        columns.fit();
        if (!all.isEmpty()) {
            table.setSelection(Math.max(0, Math.min(at, all.size() - 1)));
        }
        showSentence();
    }

    /** The finding chosen last, if any is. */
    Optional<Found> chosen() {
        return chosenAll().stream().findFirst();
    }

    /** All chosen findings. */
    List<Found> chosenAll() {
        return List.of(table.getSelection()).stream().map(item -> (Found) item.getData()).toList();
    }

    private void showSentence() {
        sentence.setText(chosen().map(found -> found.finding().sentence().replace("&", "&&")).orElse(""));
        page.layout();
    }

    private static Image image(Severity severity) {
        return PlatformUI.getWorkbench().getSharedImages().getImage(switch (severity) {
            case ERROR -> ISharedImages.IMG_OBJS_ERROR_TSK;
            case WARNING -> ISharedImages.IMG_OBJS_WARN_TSK;
            case NOTE -> ISharedImages.IMG_OBJS_INFO_TSK;
        });
    }
}
