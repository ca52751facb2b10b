// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import pitchstack.analysis.accuracy.AxisFit;
import pitchstack.analysis.accuracy.Words;
import pitchstack.core.accuracy.fit.IndexErrorMap;
import pitchstack.core.units.TrueMinus;
import pitchstack.export.plot.IndexErrorPlot;
import pitchstack.export.plot.PlotUnit;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Columns;
import pitchstack.ui.views.SettingText;
import pitchstack.ui.views.chart.ChartCanvas;

/** The errors of single indices, drawn, and as a table of one line an index. */
final class TeethPane {
    private static final int[] PARTS = {60, 40};

    private final SashForm pane;
    private final ChartCanvas chart;
    private final Table table;
    private final Columns columns;

    TeethPane(Composite parent) {
        pane = new SashForm(parent, SWT.VERTICAL);
        chart = new ChartCanvas(pane, "Errors of single teeth by index");
        table = new Table(pane, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        Accessibles.name(table, "Errors of single teeth");
        columns = new Columns(table, 3, "Stage", "Index\t", "Error\t", "± (95 %)\t", "Larger than chance");
        pane.setWeights(PARTS);
    }

    Control control() {
        return pane;
    }

    void show(AxisFit fit) {
        chart.show(plot(fit));
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

    private static IndexErrorPlot plot(AxisFit fit) {
        return new IndexErrorPlot(fit.maps().stream().map(map -> new IndexErrorPlot.Stage(
                SettingText.stage(fit.run().spec(), map.stage()), map.byIndex().entrySet().stream().map(one ->
                        new IndexErrorPlot.Point(one.getKey(), one.getValue().value(), one.getValue().within())).toList())).toList(),
                PlotUnit.ofErrors(fit.run().spec().scale()));
    }
}
