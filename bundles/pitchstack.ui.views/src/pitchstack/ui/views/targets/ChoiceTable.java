// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import java.util.List;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.units.Scale;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Columns;
import pitchstack.ui.views.SettingText;
import pitchstack.ui.views.TableMenu;

/** All settings that reach the target, the best first, to choose another one. */
final class ChoiceTable {
    /** Without a few pixels to spare, the table would show bars to scroll by. */
    private static final int SLACK = 6;
    /** More rows are scrolled to, so that the steps stay in sight. */
    private static final int MOST_ROWS = 12;

    private final Composite panel;
    private final Label title;
    private final Table table;
    private final Columns columns;
    private final Button more;
    private Runnable chosen = () -> { };

    ChoiceTable(Composite parent) {
        panel = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(panel);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(panel);
        panel.setVisible(false);
        title = new Label(panel, SWT.NONE);
        table = new Table(panel, SWT.BORDER | SWT.SINGLE | SWT.FULL_SELECTION);
        Accessibles.name(table, "Choices within the tolerance");
        columns = new Columns(table, 4, "Position\t", "Error\t", "Effort\t", "Worn", "Setting");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(table);
        table.addListener(SWT.Selection, e -> chosen.run());
        new TableMenu(table);
        more = new Button(panel, SWT.PUSH);
        more.setText("More choices");
        more.setToolTipText("List " + Question.MORE + " further settings within the tolerance");
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(more);
    }

    /** @param listener called when more choices shall be listed */
    void onMore(Runnable listener) {
        more.addListener(SWT.Selection, e -> listener.run());
    }

    /** @param listener called when another row is chosen */
    void onChoice(Runnable listener) {
        chosen = listener;
    }

    /** @param listener called when Enter is pressed on a row */
    void onEnter(Runnable listener) {
        table.addListener(SWT.DefaultSelection, e -> listener.run());
    }

    /** Lists the choices of an answer with the best one chosen; shows nothing where there is none to choose from. */
    void show(Planned answer) {
        table.removeAll();
        List<PlannedSetting> choices = answer.choices();
        for (PlannedSetting choice : choices) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(texts(choice, answer));
            item.setData(choice);
        }
        if (!choices.isEmpty()) {
            table.select(0);
        }
        boolean mayBeMore = choices.size() > answer.request().alternatives();
        title.setText((mayBeMore ? "The first " + choices.size() : "All " + choices.size())
                + " choices within the tolerance, least effort first");
        ((GridData) more.getLayoutData()).exclude = !mayBeMore;
        more.setVisible(mayBeMore);
        GridData size = (GridData) table.getLayoutData();
        int rows = Math.min(MOST_ROWS, choices.size());
        size.heightHint = table.getHeaderHeight() + rows * table.getItemHeight() + SLACK;
        columns.fit();
        setShown(choices.size() > 1);
    }

    private static String[] texts(PlannedSetting choice, Planned answer) {
        Scale scale = answer.axis().scale();
        return new String[] {scale.format(choice.position()), SettingText.error(scale, choice.error()),
                answer.wording().effort(choice), SettingText.worn(answer.axis(), choice),
                SettingText.setting(answer.axis(), choice.setting())};
    }

    /** Shows nothing. */
    void hide() {
        table.removeAll();
        setShown(false);
    }

    /** The chosen setting, or {@code null}. */
    PlannedSetting chosen() {
        TableItem[] rows = table.getSelection();
        return rows.length == 0 ? null : (PlannedSetting) rows[0].getData();
    }

    private void setShown(boolean visible) {
        ((GridData) panel.getLayoutData()).exclude = !visible;
        panel.setVisible(visible);
    }
}
