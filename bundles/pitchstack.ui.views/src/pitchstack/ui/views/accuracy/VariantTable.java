// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.accuracy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import pitchstack.core.accuracy.teeth.Joint;
import pitchstack.core.accuracy.teeth.ToothForm;
import pitchstack.core.accuracy.teeth.ToothVariant;
import pitchstack.core.accuracy.teeth.VariantRow;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Columns;

/** Teeth as they are tried out beside solid, slotted and deeper ones: what each saves in preload and costs in strength. */
final class VariantTable {
    /** A usual slot, as a part of the tooth at the pitch line, and a deeper gap, as a part of the dedendum. */
    private static final double SLOT_PART = 0.25;
    private static final double WELL_PART = 1;
    private static final int NARROW = 60;

    private final Table table;
    private final Columns columns;

    VariantTable(Composite parent, int span) {
        table = new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        table.setToolTipText("The preload in newtons at which so many flanks bear, and the bending stress in the root"
                + " of a tooth that bears its part where 84 % do.");
        Accessibles.name(table, "Ways to make the tooth");
        columns = new Columns(table, 0, TeethWords.columns().toArray(String[]::new));
        GridDataFactory.fillDefaults().grab(true, false).span(span, 1).hint(NARROW, SWT.DEFAULT).applyTo(table);
    }

    /** Compares. */
    void show(Joint joint) {
        Map<String, ToothVariant> variants = variants(joint);
        List<VariantRow> rows = VariantRow.compare(joint.pair(), joint.teeth(), joint.scatterM(),
                List.copyOf(variants.values()));
        table.setRedraw(false);
        table.removeAll();
        int at = 0;
        for (String name : variants.keySet()) {
            VariantRow row = rows.get(at++);
            new TableItem(table, SWT.NONE).setText(new String[] {name, TeethWords.stiffness(row.stiffnessNPerM()),
                    TeethWords.newtons(row.halfN()), TeethWords.newtons(row.mostN()),
                    TeethWords.newtons(row.nearlyAllN()),
                    TeethWords.newtons(row.allN()), TeethWords.stress(row.rootStressPa())});
        }
        table.setRedraw(true);
    }

    /** Shows nothing. */
    void clear() {
        table.removeAll();
    }

    void fit() {
        columns.fit();
    }

    private static Map<String, ToothVariant> variants(Joint joint) {
        ToothForm form = joint.pair().form();
        Map<String, ToothVariant> variants = new LinkedHashMap<>();
        variants.put("As set above", joint.variant());
        variants.put("Solid", ToothVariant.SOLID);
        variants.put("Slot of a quarter", new ToothVariant(SLOT_PART * form.thicknessM(form.dedendumM()), true, 0));
        variants.put("Gaps twice as deep", new ToothVariant(0, false, WELL_PART * form.dedendumM()));
        return variants;
    }
}
