// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.Session;

/** The context menus of tables and charts in views. */
class TableMenuTest {
    private final Hands hands = new Hands();
    private Bench bench;
    private Session session;

    @BeforeEach
    void open(@TempDir Path folder) throws IOException {
        bench = new Bench(folder);
        session = bench.openFence();
    }

    @AfterEach
    void close() {
        bench.clear();
        bench.view("pitchstack.ui.views.target");
    }

    /** A control of a view that has just been opened. */
    private <T extends Control> T seen(Class<T> kind, Predicate<T> which) {
        hands.until("it is seen", () -> !hands.all(bench.shell(), kind, which.and(Control::isVisible)).isEmpty());
        return hands.the(bench.shell(), kind, which);
    }

    private Table table(String firstColumn, int columns) {
        return seen(Table.class, t -> t.getColumnCount() == columns
                && t.getColumn(0).getText().equals(firstColumn));
    }

    /** The entries of a control's menu, those that can be chosen in plain, the others in brackets. */
    private static List<String> entries(Control control) {
        return items(control).filter(item -> (item.getStyle() & SWT.SEPARATOR) == 0).map(item -> item.isEnabled()
                ? name(item) : "(" + name(item) + ")").toList();
    }

    private static Stream<MenuItem> items(Control control) {
        Menu menu = control.getMenu();
        menu.notifyListeners(SWT.Show, new Event());
        return Stream.of(menu.getItems());
    }

    private static String name(MenuItem item) {
        return item.getText().replace("&", "").replaceFirst("\t.*", "");
    }

    private void choose(Control control, String entry) {
        items(control).filter(item -> name(item).equals(entry)).findFirst().orElseThrow()
                .notifyListeners(SWT.Selection, new Event());
        hands.settle();
    }

    private String clip() {
        Clipboard clipboard = new Clipboard(bench.shell().getDisplay());
        Object text = clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        return String.valueOf(text);
    }

    @Test
    void showsDeletesAndCopiesSavedTargets() {
        bench.view("pitchstack.ui.views.target");
        Table saved = table("Name", 3);
        assertEquals(List.of("(Show in Drawing)", "(Delete)", "(Copy Row)", "Copy Table"), entries(saved));
        saved.select(1);
        saved.notifyListeners(SWT.Selection, new Event());
        choose(saved, "Copy Row");
        assertEquals("Toe kick\t3 1/2 in\t", clip());
        choose(saved, "Copy Table");
        assertEquals("Name\tPosition\tTolerance", clip().lines().findFirst().orElseThrow());
        assertEquals(session.axis().getTargets().size() + 1, clip().lines().count());
        choose(saved, "Show in Drawing");
        assertSame(session.axis().getTargets().get(1), ((IStructuredSelection) bench.selection()).getFirstElement());
        int before = session.axis().getTargets().size();
        choose(saved, "Delete");
        assertEquals(before - 1, session.axis().getTargets().size());
    }

    @Test
    void copiesTheChosenRowByKey() {
        bench.view("pitchstack.ui.views.target");
        Table saved = table("Name", 3);
        hands.focus(saved);
        saved.select(0);
        hands.chord(SWT.CTRL, 'c');
        hands.until("it is on the clipboard", () -> clip().equals("Drawer side\t12 in\t"));
    }

    @Test
    void offersWhatCanBeDoneWithMarks() {
        bench.view("pitchstack.ui.views.wear");
        Table marks = seen(Table.class, t -> Stream.of(t.getColumns())
                .anyMatch(column -> column.getText().equals("Note")) && t.getItemCount() == 1);
        marks.select(0);
        marks.notifyListeners(SWT.Selection, new Event());
        hands.settle();
        assertEquals(List.of("Show in Drawing", "Mark…", "Suppose…", "Delete", "(Keep as Marks)", "(Forget)", "Copy Row",
                "Copy Table"), entries(marks));
        choose(marks, "Copy Row");
        assertTrue(clip().contains("100"), clip());
    }

    @Test
    void offersWhatCanBeDoneWithRowsOfTheList() {
        bench.view("pitchstack.ui.views.list");
        Table list = seen(Table.class, t -> t.getColumnCount() == 11);
        list.select(0);
        list.notifyListeners(SWT.Selection, new Event());
        assertTrue(entries(list).containsAll(List.of("Show in Drawing", "Edit", "Duplicate", "Delete", "Copy with Answers")),
                entries(list).toString());
        choose(list, "Show in Drawing");
        assertSame(session.axis().getTargets().get(0), ((IStructuredSelection) bench.selection()).getFirstElement());
    }

    /** The middle of the strip is the middle of the travel that it shows. */
    @Test
    void asksForThePositionUnderThePointerOnTheStrip() {
        bench.view("pitchstack.ui.views.coverage");
        Canvas strip = seen(Canvas.class, c -> c.getClass() == Canvas.class && c.getMenu() != null);
        hands.until("it is worked out", () -> !hands.all(bench.shell(), Label.class, l -> l.isVisible()
                && l.getText().contains("is reached within")).isEmpty());
        hands.until("the strip is drawn", () -> {
            point(strip);
            return entries(strip).get(0).matches("Plan a Move to \\d.* in");
        });
        String entry = entries(strip).get(0);
        String position = entry.replace("Plan a Move to ", "");
        choose(strip, "Copy Position");
        assertEquals(position, clip());
        choose(strip, entry);
        double inches = Double.parseDouble(position.replace(" in", ""));
        assertEquals(48, inches, 0.5, "the middle of 96 in");
        hands.until("it is asked for", () -> hands.all(bench.shell(), Text.class, t -> t.isVisible()
                && t.getText().matches("[\\d.]+") && Double.parseDouble(t.getText()) == inches).size() == 1);
        assertFalse(entries(strip).contains("(Show All)"));
    }

    private static void point(Control control) {
        Event event = new Event();
        event.x = control.toDisplay(control.getSize().x / 2, 0).x;
        event.y = control.toDisplay(0, control.getSize().y / 2).y;
        event.doit = true;
        control.notifyListeners(SWT.MenuDetect, event);
    }
}
