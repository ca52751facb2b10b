// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import pitchstack.analysis.accuracy.CorrectionGain;
import pitchstack.analysis.accuracy.CorrectionGain.Gained;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.Scale;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Columns;
import pitchstack.ui.views.SettingText;

/** What the corrections buy, one line a target. */
final class GainTable {
    private final Table table;
    private final Columns columns;

    GainTable(Composite parent) {
        table = new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        Accessibles.name(table, "Targets before and after");
        table.setToolTipText("Before: how far off the carriage really is by the measured pitches where it is set as planned till now."
                + " After: how far off it is once the plan uses them.");
        columns = new Columns(table, 0, "Target", "Position\t", "Tolerance\t", "Before\t", "After\t", "New setting");
    }

    Control control() {
        return table;
    }

    void show(CorrectionGain gain, AxisSpec axis) {
        table.removeAll();
        Scale scale = axis.scale();
        for (Gained one : gain.stops()) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(new String[] {one.stop().name(), scale.format(one.stop().target()),
                    "±" + scale.formatSize(one.stop().tolerance()),
                    one.trulyOff().isPresent() ? off(scale, one.trulyOff().getAsLong(), one.heldBefore()) : "not reached",
                    one.after().map(move -> off(scale, move.error(), true)).orElse("not reached"),
                    one.after().map(move -> SettingText.setting(axis, move.setting())).orElse("")});
        }
        columns.fit();
    }

    private static String off(Scale scale, long error, boolean held) {
        return SettingText.error(scale, error) + (held ? "" : ", out");
    }

    /** All of it in a sentence. */
    static String words(CorrectionGain gain, Scale scale) {
        int all = gain.stops().size();
        String count = all == 1 ? "Of 1 target " : "Of " + all + " targets ";
        return count + gain.heldBefore() + (gain.heldBefore() == 1 ? " keeps" : " keep")
                + " the tolerance where they are set as planned till now, and " + gain.heldAfter()
                + " once the plan uses these pitches."
                + (gain.largestBefore().isPresent() && gain.largestAfter().isPresent() ? " Largest error before "
                + scale.formatSize(gain.largestBefore().getAsLong()) + ", after "
                + scale.formatSize(gain.largestAfter().getAsLong()) + "." : "");
    }
}
