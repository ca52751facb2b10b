// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IPageLayout;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.Session;
import pitchstack.model.Stage;
import pitchstack.model.StageSource;

/** The Properties view of the platform on our elements: typed values are edits, and wrong ones are refused. */
class PropertiesTest {
    private final Hands hands = new Hands();
    private Bench bench;
    private Shell shell;
    private Session session;
    private Stage rack;

    @BeforeEach
    void open(@TempDir Path folder) {
        bench = new Bench(folder);
        shell = bench.shell();
        session = bench.open("Drill table", Stacks.millimetres());
        rack = session.axis().getStages().get(0);
        bench.select(rack);
        bench.view(IPageLayout.ID_PROP_SHEET);
    }

    @AfterEach
    void close() {
        bench.clear();
    }

    @Test
    void changesThePitchByTypingAndUndoesIt() {
        edit("Pitch", "6.35 mm");
        hands.picture(shell, "properties-typing");
        hands.enter(0);
        assertEquals("6.35 mm", rack.getPitch());
        hands.until("the spacing follows", () -> value("Spacing").equals("6.350 mm"));
        session.history().undo();
        assertEquals("5 mm", rack.getPitch());
        hands.until("the old pitch is shown", () -> value("Pitch").equals("5 mm"));
        assertEquals(new StructuredSelection(rack), bench.selection());
    }

    @Test
    void refusesAWrongPitchWithASentence() {
        edit("Pitch", "minus");
        hands.enter(0);
        assertFalse(hands.all(shell, CLabel.class,
                l -> l.isVisible() && l.getText().contains("“minus” is not a length")).isEmpty());
        hands.picture(shell, "properties-refused");
        assertEquals("5 mm", rack.getPitch());
        assertFalse(session.isDirty());
        hands.key(0, SWT.ESC);
        assertEquals("5 mm", value("Pitch"));
    }

    @Test
    void choosesAmongTheWordsAllowed() {
        open("Source");
        CCombo cell = hands.the(tree(), CCombo.class, c -> true);
        assertEquals(List.of("bought", "printed"), List.of(cell.getItems()));
        hands.key(0, SWT.ARROW_DOWN);
        hands.enter(0);
        assertEquals(StageSource.PRINTED, rack.getSource());
        hands.until("it is shown", () -> value("Source").equals("printed"));
    }

    @Test
    void showsFactsInTheOrderOfTheTradeAndKeepsDerivedOnesClosed() {
        assertEquals(List.of("Name", "Source", "Pitch", "Spacing", "Index"),
                Arrays.stream(tree().getItem(0).getItems()).map(item -> item.getText(0)).toList());
        open("Spacing");
        assertTrue(hands.all(tree(), Text.class, t -> t.isVisible()).isEmpty(), "it follows from the pitch");
    }

    private void open(String label) {
        Tree tree = tree();
        TreeItem item = item(label);
        hands.focus(tree);
        tree.setSelection(item);
        tree.showItem(item);
        hands.settle();
        hands.enter(0);
    }

    private void edit(String label, String typed) {
        open(label);
        Text cell = hands.the(tree(), Text.class, t -> true);
        cell.selectAll();
        hands.type(typed);
        assertEquals(typed, cell.getText());
    }

    private String value(String label) {
        return item(label).getText(1);
    }

    private TreeItem item(String label) {
        for (TreeItem group : tree().getItems()) {
            for (TreeItem item : group.getItems()) {
                if (item.getText(0).equals(label)) {
                    return item;
                }
            }
        }
        throw new AssertionError("no property " + label);
    }

    private Tree tree() {
        return hands.the(shell, Tree.class, t -> t.getColumnCount() == 2);
    }
}
