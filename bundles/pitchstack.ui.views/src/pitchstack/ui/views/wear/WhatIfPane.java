// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import java.util.List;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import pitchstack.core.coverage.StopChange;
import pitchstack.core.coverage.Supposition;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Wording;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Busy;
import pitchstack.ui.views.Columns;

/** What marks cost, in sentences, and the targets for which they matter. */
final class WhatIfPane {
    private static final int NARROW = 60;
    private static final int MARGIN = 4;

    private final ScrolledComposite scroll;
    private final Composite pane;
    private final Label head;
    private final Label words;
    private final Table table;
    private final Columns columns;
    private final Busy busy;

    /** @param stop called when what is being worked out is no longer wanted */
    WhatIfPane(Composite parent, Runnable stop) {
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        pane = new Composite(scroll, SWT.NONE);
        scroll.setContent(pane);
        GridLayoutFactory.fillDefaults().margins(MARGIN, 0).spacing(0, MARGIN).applyTo(pane);
        head = label();
        busy = new Busy(pane, 1, "Working out what the marks cost", stop);
        words = label();
        table = new Table(pane, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        Accessibles.name(table, "Targets for which the marks matter");
        columns = new Columns(table, 0, "Target", "Without\t", "With the marks\t", "Extra\t");
        GridDataFactory.fillDefaults().grab(true, false).hint(NARROW, SWT.DEFAULT).exclude(true).applyTo(table);
        scroll.addListener(SWT.Resize, e -> layout());
    }

    private Label label() {
        Label label = new Label(pane, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(NARROW, SWT.DEFAULT).applyTo(label);
        return label;
    }

    ScrolledComposite control() {
        return scroll;
    }

    Busy busy() {
        return busy;
    }

    /** Says one thing instead of a result. */
    void say(String sentence) {
        head.setText(sentence.replace("&", "&&"));
        words.setText("");
        list(List.of(), null);
    }

    /** Shows what marks cost. */
    void show(String title, Supposition found, WhatIfWords with) {
        head.setText(title.replace("&", "&&"));
        words.setText(with.of(found).replace("&", "&&"));
        list(found.stops().stream().filter(StopChange::isChanged).toList(), with);
    }

    private void list(List<StopChange> changed, WhatIfWords with) {
        table.removeAll();
        for (StopChange stop : changed) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(new String[] {with.name(stop), effort(stop.now()), effort(stop.supposed()),
                    stop.extraMs().isPresent() ? WhatIfWords.extra(stop.extraMs().getAsLong()) : "lost"});
        }
        ((GridData) table.getLayoutData()).exclude = changed.isEmpty();
        table.setVisible(!changed.isEmpty());
        layout();
        columns.fit();
    }

    private static String effort(Optional<PlannedSetting> move) {
        return move.map(m -> Wording.effort(m.effortMs()) + (m.wornStages().isEmpty() ? "" : ", worn")).orElse("not reached");
    }

    private void layout() {
        pane.layout(true, true);
        scroll.setMinHeight(pane.computeSize(Math.max(1, scroll.getClientArea().width), SWT.DEFAULT).y);
    }
}
