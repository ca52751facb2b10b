// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import pitchstack.ui.views.Columns;

/** A table of names and numbers in a window of its own, made wider and narrower. */
class ColumnsTest {
    private static final int LEAST = 60;
    private static final int HEIGHT = 150;

    private final Hands hands = new Hands();
    private Shell shell;
    private Table table;

    @BeforeEach
    void open() {
        shell = new Shell(Display.getCurrent());
        shell.setSize(700, 300);
        table = new Table(shell, SWT.BORDER | SWT.FULL_SELECTION);
    }

    @AfterEach
    void close() {
        shell.dispose();
        hands.settle();
    }

    private void fill(Columns columns) {
        table.setSize(600, HEIGHT);
        shell.open();
        new TableItem(table, SWT.NONE).setText(new String[] {"A hole with a long name", "1024.900 mm"});
        columns.fit();
        hands.settle();
    }

    private int width() {
        return Stream.of(table.getColumns()).mapToInt(TableColumn::getWidth).sum();
    }

    private int[] at(int width) {
        table.setSize(width, HEIGHT);
        hands.settle();
        return Stream.of(table.getColumns()).mapToInt(TableColumn::getWidth).toArray();
    }

    @Test
    void cutTheNameAndNeverTheNumberWhereTheyMay() {
        fill(new Columns(table, 0, "Name", "Position").cutting(LEAST));
        int number = table.getColumn(1).getWidth();
        assertEquals(table.getClientArea().width, width(), "the name takes what is left");
        assertEquals(number, at(number + LEAST + 30)[1]);
        assertEquals(table.getClientArea().width, width(), "the name is cut");
        assertEquals(LEAST, at(number)[0], "no shorter than it may");
        assertEquals(number, table.getColumn(1).getWidth());
    }

    @Test
    void cutNothingUnlessTheyMay() {
        fill(new Columns(table, 0, "Name", "Position"));
        int number = table.getColumn(1).getWidth();
        int name = at(number)[0];
        assertTrue(name > LEAST, "the whole name: " + name);
        assertEquals(number, table.getColumn(1).getWidth());
    }
}
