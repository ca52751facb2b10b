// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.accuracy;

import java.util.List;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import pitchstack.analysis.accuracy.BudgetLine;
import pitchstack.export.plot.Figures;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Columns;

/** The contributions of a budget, the largest first. */
final class BudgetTable {
    private static final int UNCERTAINTY = 1;
    private static final int NARROW = 60;

    private final Table table;
    private final Columns columns;
    private List<BudgetLine> lines = List.of();

    /** @param chosen called when a line is chosen */
    BudgetTable(Composite parent, int span, Runnable chosen) {
        table = new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        Accessibles.name(table, "Contributions to the uncertainty");
        table.setToolTipText("Choose a line, and press Where These Numbers Come From, to read its formula first.");
        columns = new Columns(table, 0, "What", "Size (1 σ)\t", "Repeats", "Share\t", "Shape", "Known by");
        GridDataFactory.fillDefaults().grab(true, false).span(span, 1).hint(NARROW, SWT.DEFAULT).applyTo(table);
        table.addListener(SWT.Selection, e -> chosen.run());
    }

    /** Shows lines; a chosen one stays chosen by its name. */
    void show(List<BudgetLine> shown, Sizes sizes) {
        String kept = chosen().map(BudgetLine::name).orElse("");
        lines = shown;
        table.setRedraw(false);
        table.removeAll();
        table.getColumn(UNCERTAINTY).setText("1 σ, " + sizes.errors().symbol());
        for (BudgetLine line : lines) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(new String[] {line.name(), sizes.bare(line.uncertaintyM()), line.repeats() ? "yes" : "no",
                    Figures.percent(line.share()), line.distribution(), line.type().equals("A") ? "readings (A)"
                    : "other (B)"});
            if (line.name().equals(kept)) {
                table.setSelection(item);
            }
        }
        ((GridData) table.getLayoutData()).heightHint =
                table.getItemHeight() * (1 + Math.max(1, lines.size())) + table.getHeaderHeight() / 2;
        table.setRedraw(true);
    }

    void fit() {
        columns.fit();
    }

    /** The chosen line. */
    Optional<BudgetLine> chosen() {
        int at = table.getSelectionIndex();
        return at >= 0 && at < lines.size() ? Optional.of(lines.get(at)) : Optional.empty();
    }
}
