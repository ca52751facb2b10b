// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.Session;
import pitchstack.edit.ToothMark;
import pitchstack.model.Row;
import pitchstack.model.WearKind;

/**
 * The wear of the cross-cut fence. By hand, in hundredths of an inch: a position u is 25 n + 24 m with m from −12 to 12,
 * so that each u has one m and one n, and every n has 25 positions, each 0.004 in wide within 0.002 in. The 24 rider
 * teeth meet base teeth 100 and 101 at 25 indices, and tooth 48 alone at the 24 from 25 to 48: 625 positions, 2.5 in, and
 * 600, 2.4 in. Of the targets, 12 in is u 1200, n 48, and 9.76 in is u 976, m −1, n 40; no other has n from 25 to 48.
 */
class WearViewTest {
    private static final String COST = "Lost: nothing.\nOnly over worn teeth: 2.500 in (2.6 %) in 625 stretches, largest"
            + " 0.004 in";
    private static final String SUPPOSED = "Lost: 2.400 in (2.5 %) in 600 stretches, largest 0.004 in";

    private final Hands hands = new Hands();
    private Bench bench;
    private Shell shell;
    private Session session;
    private Row rack;

    @BeforeEach
    void open(@TempDir Path folder) throws IOException {
        bench = new Bench(folder);
        shell = bench.shell();
        session = bench.openFence();
        rack = session.axis().getStages().get(0).getBaseRow();
        bench.view("pitchstack.ui.views.wear");
        page("Marks");
        awaits(COST);
    }

    @AfterEach
    void close() {
        page("Marks");
        bench.clear();
        bench.view("org.eclipse.ui.views.PropertySheet");
    }

    @Test
    void listsTheMarksAndWhatTheyCost() {
        assertEquals(List.of("Rack", "base row", "100", "101", "worn", "rounded by years at 24 in"), line(0));
        assertTrue(says("Of 13 targets, each set from here, none is lost, 1 only over worn teeth; no extra effort."), "the shelf at 24 in, n 96");
        hands.picture(shell, "wear-fence");
    }

    /** The first engaged tooth is 48. */
    @Test
    void addsAMarkInTheTableAndTakesItBack() {
        hands.focus(table());
        hands.key(0, SWT.INSERT);
        hands.until("the first tooth is edited", () -> cell().equals("48"));
        hands.type("500");
        hands.enter(0);
        hands.until("it is refused", () -> says("Tooth 500 is out of the row: the base row of “Rack” has teeth 0 to 407."));
        hands.chord(SWT.MOD1, 'a');
        hands.type("100");
        hands.enter(0);
        hands.until("it is refused", () -> says("Teeth 100 to 101 of the base row of “Rack” are already marked as worn"));
        hands.picture(shell, "wear-refused");
        hands.chord(SWT.MOD1, 'a');
        hands.type("60");
        hands.enter(0);
        hands.until("it is marked", () -> marks().equals("100–101 worn, 60–60 worn"));
        hands.until("it is listed", () -> line(1).subList(0, 4).equals(List.of("Rack", "base row", "60", "60")));
        hands.chord(SWT.MOD1, 'z');
        hands.until("the tooth is put back", () -> marks().equals("100–101 worn, 48–48 worn"));
        hands.chord(SWT.MOD1, 'z');
        hands.until("it is gone", () -> marks().equals("100–101 worn") && table().getItemCount() == 1);
        assertFalse(session.isDirty());
    }

    @Test
    void deletesAMarkByTheKeyboard() {
        hands.focus(table());
        hands.until("a line is chosen", () -> table().getSelectionCount() == 1);
        hands.key(0, SWT.DEL);
        hands.until("it is gone", () -> marks().isEmpty());
        awaits("No tooth is marked.");
        hands.chord(SWT.MOD1, 'z');
        hands.until("it is back", () -> marks().equals("100–101 worn"));
    }

    @Test
    void supposesWithoutChangingTheFile() {
        push("S&uppose…");
        hands.enter(0);
        awaits(SUPPOSED);
        assertEquals(List.of("Rack", "base row", "48", "48", "barred (supposed)"), line(1).subList(0, 5));
        assertTrue(says("Only over worn teeth: nothing."));
        assertTrue(says("Of 13 targets, each set from here, 2 are lost (“Drawer side”, “Bottom rail”); no extra effort."));
        assertFalse(session.isDirty());
        hands.picture(shell, "wear-supposed");
        push("F&orget");
        awaits(COST);
        assertEquals(1, table().getItemCount());
    }

    @Test
    void keepsWhatIsSupposedAsOneChange() {
        session.suppose(List.of(new ToothMark(rack, 48, 48, WearKind.BARRED, ""),
                new ToothMark(rack, 200, 210, WearKind.WORN, "")));
        hands.until("they are listed", () -> table().getItemCount() == 3);
        push("&Keep as Marks");
        hands.until("they are marked", () -> marks().equals("100–101 worn, 200–210 worn, 48–48 barred"));
        assertTrue(session.supposed().isEmpty());
        hands.focus(table());
        hands.chord(SWT.MOD1, 'z');
        hands.until("they are gone", () -> marks().equals("100–101 worn"));
        assertFalse(session.isDirty(), "one change");
    }

    /**
     * From 48: the rack goes to 50 and later back to 48, which seats base teeth 50 to 73 and 48 to 71, so 50 to 71 twice and
     * 26 teeth at all; a second run after a shift by 30 teeth seats 78 to 103, none of them again.
     */
    @Test
    void countsTheSeatingsOfTypedSettings() {
        page("Seatings");
        Combo order = hands.the(shell, Combo.class, c -> c.indexOf("Settings typed here") >= 0);
        order.select(order.indexOf("Settings typed here"));
        order.notifyListeners(SWT.Selection, new Event());
        Text typed = hands.the(shell, Text.class, t -> (t.getStyle() & SWT.MULTI) != 0
                && String.valueOf(t.getToolTipText()).startsWith("One setting a line"));
        hands.focus(typed);
        for (String line : List.of("48 0", "50 0", "50 3", "48 3")) {
            hands.type(line);
            hands.enter(0);
        }
        awaits("4 settings.");
        assertEquals(List.of("Rack, base row", "50 to 71", "2", "382 of 408"), line(0));
        assertEquals(List.of("Fine row, base row", "3 to 23", "1", "3 of 24"), line(2));
        field("How many times").setText("10");
        field("By how many teeth").setText("30");
        awaits("at most 20 seatings on a tooth of its base row, instead of 40.");
        assertEquals("20", line(0).get(2));
        hands.picture(shell, "wear-seatings-typed");
        typed.setText("48\n500 0");
        awaits("Line 1: “48” has 1 index, but there are 2 stages. 1 more");
    }

    /** Eleven of the thirteen targets are reached; 37 5/8 in within 0.002 in and 98 in are not. */
    @Test
    void countsTheSeatingsOfTheTargets() {
        page("Seatings");
        awaits("11 settings; 2 targets are not reached.");
        hands.picture(shell, "wear-seatings-fence");
    }

    private void awaits(String sentence) {
        hands.until("it says " + sentence.substring(0, Math.min(30, sentence.length())), () -> says(sentence));
        hands.settle();
    }

    private boolean says(String words) {
        return !hands.all(shell, Label.class, l -> l.isVisible() && l.getText().contains(words)).isEmpty();
    }

    private Table table() {
        return hands.the(shell, Table.class, t -> t.getColumnCount() > 0
                && List.of("Stage", "Row").contains(t.getColumn(0).getText()));
    }

    private List<String> line(int number) {
        if (number >= table().getItemCount()) {
            return List.of("", "", "", "", "", "");
        }
        TableItem item = table().getItem(number);
        return IntStream.range(0, table().getColumnCount()).mapToObj(item::getText).toList();
    }

    /** What stands in the cell that is edited; empty while none is. */
    private String cell() {
        return hands.all(table(), Text.class, t -> t.isVisible()).stream().map(Text::getText).findFirst().orElse("");
    }

    private Text field(String tip) {
        return hands.the(shell, Text.class, t -> String.valueOf(t.getToolTipText()).startsWith(tip));
    }

    private String marks() {
        return rack.getWorn().stream().map(w -> w.getFirst() + "–" + w.getLast() + " " + w.getKind().getLiteral()).sorted()
                .reduce((a, b) -> a + ", " + b).orElse("");
    }

    private void push(String text) {
        hands.the(shell, Button.class, b -> b.getText().equals(text) && b.isEnabled()).notifyListeners(SWT.Selection, new Event());
        hands.settle();
    }

    private void page(String title) {
        for (ToolBar bar : hands.all(shell, ToolBar.class, b -> b.isVisible())) {
            for (ToolItem item : bar.getItems()) {
                boolean radio = (item.getStyle() & SWT.RADIO) != 0;
                if (radio && (item.getText().equals("Marks") || item.getText().equals("Seatings"))) {
                    item.setSelection(item.getText().equals(title));
                }
            }
            for (ToolItem item : bar.getItems()) {
                if ((item.getStyle() & SWT.RADIO) != 0 && item.getText().equals(title)) {
                    item.notifyListeners(SWT.Selection, new Event());
                }
            }
        }
        hands.settle();
    }
}
