// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.preferences;

import java.util.List;
import java.util.Locale;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Columns;

/** Window &gt; Preferences &gt; Keys: every key of the window, to look up. */
public final class KeysPage extends PreferencePage implements IWorkbenchPreferencePage {
    /** Id of this page. */
    public static final String ID = "pitchstack.ui.views.preferences.keys";
    private static final int LEAST_ROWS = 10;
    /** Room for all three columns in any size of text; the dialog is as wide as the page that is shown first. */
    static final int WIDTH_CHARS = 98;

    private List<KeyList.Line> lines = List.of();
    private Table table;
    private Columns columns;

    /** A page with nothing to apply. */
    public KeysPage() {
        noDefaultAndApplyButton();
    }

    @Override
    public void init(IWorkbench workbench) {
        lines = new KeyList(workbench).lines();
    }

    @Override
    protected Control createContents(Composite parent) {
        initializeDialogUnits(parent);
        Composite page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(page);
        new Label(page, SWT.NONE).setText("&Find");
        Text find = new Text(page, SWT.SEARCH | SWT.ICON_CANCEL);
        find.setMessage("part of a name, or of a key");
        Accessibles.name(find, "Find a key");
        find.addModifyListener(event -> fill(find.getText()));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(find);
        table = new Table(page, SWT.BORDER | SWT.FULL_SELECTION);
        Accessibles.name(table, "Keys");
        columns = new Columns(table, 0, "What it does", "Key", "Where");
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1)
                .hint(convertWidthInCharsToPixels(WIDTH_CHARS) - table.computeTrim(0, 0, 0, 0).width,
                        LEAST_ROWS * table.getItemHeight()).applyTo(table);
        Label more = new Label(page, SWT.WRAP);
        more.setText("The arrow keys and others that move what is selected are listed in the user guide (F1).");
        GridDataFactory.fillDefaults().span(2, 1).applyTo(more);
        fill("");
        return page;
    }

    private void fill(String part) {
        String wanted = part.strip().toLowerCase(Locale.ROOT);
        table.removeAll();
        for (KeyList.Line line : lines) {
            if ((line.command() + " " + line.keys()).toLowerCase(Locale.ROOT).contains(wanted)) {
                new TableItem(table, SWT.NONE).setText(new String[] {line.command(), line.keys(), line.where()});
            }
        }
        columns.fit();
    }
}
