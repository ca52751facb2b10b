// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.util.Locale;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import pitchstack.analysis.accuracy.AxisFit;
import pitchstack.analysis.accuracy.Si;
import pitchstack.core.accuracy.fit.Estimate;
import pitchstack.core.accuracy.fit.PitchFit;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;
import pitchstack.export.plot.Figures;
import pitchstack.model.Axis;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Columns;
import pitchstack.ui.views.SettingText;

/** The pitches of a fit, one line a stage. */
final class FitTable {
    private static final double PPM = 1e6;

    private final Table table;
    private final Columns columns;

    FitTable(Composite parent) {
        table = new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        Accessibles.name(table, "Fitted pitches");
        table.setToolTipText("With 95 % probability the true correction lies within ± of the fitted one.");
        columns = new Columns(table, 0, "Stage", "Pitch is", "Drawn\t", "Measured\t", "Correction\t", "± (95 %)\t", "In the file\t");
    }

    Table control() {
        return table;
    }

    void clear() {
        table.removeAll();
    }

    /** Shows a fit beside what the stages have now. */
    void show(AxisFit fit, Axis axis) {
        clear();
        Scale scale = fit.run().spec().scale();
        PitchFit found = fit.fit().orElseThrow();
        for (int j = 0; j < fit.run().stages().size(); j++) {
            Estimate correction = found.correction(j);
            double pitch = fit.run().stages().get(j).pitchM();
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(new String[] {SettingText.stage(fit.run().spec(), j), FitWords.pitch(correction), length(pitch, scale),
                    length(pitch * (1 + correction.value()), scale), ppm(correction.value()),
                    Figures.of(PPM * correction.within(), 2) + " ppm", ppm(axis.getStages().get(j).getCorrectionPpm() / PPM)});
        }
        columns.fit();
    }

    private static String length(double si, Scale scale) {
        return TrueMinus.in(scale.format(Si.counts(si, scale)));
    }

    private static String ppm(double part) {
        return (part > 0 ? "+" : "") + TrueMinus.in(String.format(Locale.ROOT, "%.1f ppm", PPM * part));
    }
}
