// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import pitchstack.analysis.accuracy.AxisFit;
import pitchstack.analysis.accuracy.Words;
import pitchstack.core.accuracy.fit.IndexErrorMap;
import pitchstack.core.units.TrueMinus;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Columns;
import pitchstack.ui.views.SettingText;

/** The errors of single indices, one line an index. */
final class MapTable {
    private final Table table;
    private final Columns columns;

    MapTable(Composite parent) {
        table = new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        Accessibles.name(table, "Errors of single teeth");
        columns = new Columns(table, 3, "Stage", "Index\t", "Error\t", "± (95 %)\t", "Larger than chance");
    }

    Control control() {
        return table;
    }

    void show(AxisFit fit) {
        table.removeAll();
        boolean rotary = fit.run().spec().scale().turn() > 0;
        for (IndexErrorMap map : fit.maps()) {
            map.byIndex().forEach((index, error) -> {
                TableItem item = new TableItem(table, SWT.NONE);
                item.setText(new String[] {SettingText.stage(fit.run().spec(), map.stage()),
                        TrueMinus.in(String.valueOf(index)), TrueMinus.in(Words.size(error.value(), rotary)),
                        Words.size(error.within(), rotary), error.isSignificant() ? "yes, taken over" : "no"});
            });
        }
        columns.fit();
    }
}
