// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
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
    /** A name cut shorter tells nothing, so that the table is scrolled by then. */
    private static final int FEWEST_LETTERS = 3;
    private static final int WORN = 3;
    private static final int SETTING = 4;
    /** As many letters as a name has. */
    private static final int WHOLE = Integer.MAX_VALUE;

    private final Composite panel;
    private final Label title;
    private final Table table;
    private final Columns columns;
    private final Button more;
    private Planned shown;
    private Runnable chosen = () -> { };

    ChoiceTable(Composite parent) {
        panel = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(panel);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(panel);
        panel.setVisible(false);
        title = new Label(panel, SWT.NONE);
        table = new Table(panel, SWT.BORDER | SWT.SINGLE | SWT.FULL_SELECTION);
        Accessibles.name(table, "Choices within the tolerance");
        columns = new Columns(table, SETTING, "Position\t", "Error\t", "Effort\t", "Worn", "Setting");
        GridDataFactory.fillDefaults().grab(true, false).applyTo(table);
        table.addListener(SWT.Selection, e -> chosen.run());
        table.addListener(SWT.Resize, e -> cutNames());
        table.addListener(SWT.MouseMove, e -> tell(table.getItem(new Point(e.x, e.y))));
        new TableMenu(table, row -> texts(row, WHOLE));
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
        shown = answer;
        table.removeAll();
        List<PlannedSetting> choices = answer.choices();
        for (PlannedSetting choice : choices) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setData(choice);
            item.setText(texts(item, WHOLE));
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
        cutNames();
        setShown(choices.size() > 1);
    }

    /**
     * Cuts the names of the stages no shorter than is needed to have every number in sight. Measured here, since a system
     * may tell the width of a column only after the next event.
     */
    private void cutNames() {
        if (table.getItemCount() == 0 || table.getSize().y == 0) {
            return;
        }
        columns.fit();
        GC gc = new GC(table);
        int padding = IntStream.range(0, WORN)
                .map(column -> table.getColumn(column).getWidth() - widest(gc, column, WHOLE)).min().orElse(0);
        int room = table.getClientArea().width - IntStream.range(0, WORN).map(c -> table.getColumn(c).getWidth()).sum();
        int letters = letters(most -> worn(gc, padding, most) + widest(gc, SETTING, most) + padding <= room);
        int worn = worn(gc, padding, letters);
        int setting = Math.max(widest(gc, SETTING, letters) + padding, room - worn);
        gc.dispose();
        for (TableItem item : table.getItems()) {
            item.setText(texts(item, letters));
        }
        table.getColumn(WORN).setWidth(worn);
        table.getColumn(SETTING).setWidth(setting);
    }

    /** The width of the column of worn stages, which is not shown where no choice stands on worn teeth. */
    private int worn(GC gc, int padding, int letters) {
        boolean clean = shown.choices().stream().allMatch(choice -> choice.wornStages().isEmpty());
        int heading = gc.textExtent(table.getColumn(WORN).getText()).x;
        return clean ? 0 : Math.max(widest(gc, WORN, letters), heading) + padding;
    }

    /** The most letters of a name for which there is room. */
    private int letters(IntPredicate fits) {
        int least = FEWEST_LETTERS;
        int most = IntStream.range(0, shown.axis().stages().size())
                .map(j -> SettingText.stage(shown.axis(), j).length()).max().orElse(0);
        if (most <= least || fits.test(most)) {
            return Math.max(1, most);
        }
        while (most - least > 1) {
            int middle = (least + most) / 2;
            if (fits.test(middle)) {
                least = middle;
            } else {
                most = middle;
            }
        }
        return least;
    }

    private int widest(GC gc, int column, int letters) {
        return Stream.of(table.getItems()).mapToInt(item -> gc.textExtent(texts(item, letters)[column]).x).max().orElse(0);
    }

    /** The names in full where they are cut. */
    private void tell(TableItem item) {
        String full = item == null ? "" : SettingText.setting(shown.axis(), ((PlannedSetting) item.getData()).setting());
        table.setToolTipText(item == null || full.equals(item.getText(SETTING)) ? null : full);
    }

    private String[] texts(TableItem item, int letters) {
        PlannedSetting choice = (PlannedSetting) item.getData();
        Scale scale = shown.axis().scale();
        return new String[] {scale.format(choice.position()), SettingText.error(scale, choice.error()),
                shown.wording().effort(choice), SettingText.worn(shown.axis(), choice, letters),
                SettingText.setting(shown.axis(), choice.setting(), letters)};
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
