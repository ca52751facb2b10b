// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.core.stack.Setting;
import pitchstack.edit.Session;
import pitchstack.edit.SetValue;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.PitchstackPackage.Literals;
import pitchstack.model.Positioner;
import pitchstack.model.Target;
import pitchstack.ui.tests.editor.FileChooser;

/**
 * A list is typed, planned in every order, and set. Expected settings are those of 50 a + 49 b = x in tenths of a
 * millimetre with |b| at most 48, so that an exact x has one; efforts are 4 s a stage and 1 s a tooth.
 */
class TargetListTest {
    private final Hands hands = new Hands();
    private Bench bench;
    private Shell shell;
    private Session session;

    @BeforeEach
    void open(@TempDir Path folder) {
        bench = new Bench(folder);
        shell = bench.shell();
        show(Stacks.millimetres());
    }

    private void show(Positioner positioner) {
        session = bench.open("List", positioner);
        bench.view("pitchstack.ui.views.list");
        hands.until("the list is shown", () -> hands.all(shell, Table.class, this::isList).size() == 1);
    }

    private void show(String... positionsAndTolerances) {
        bench.clear();
        Positioner positioner = Stacks.millimetres();
        List<Target> targets = positioner.getAxes().get(0).getTargets();
        targets.clear();
        for (String text : positionsAndTolerances) {
            Target target = PitchstackFactory.eINSTANCE.createTarget();
            target.setPosition(text.split(" ± ")[0] + " mm");
            target.setTolerance(text.contains("±") ? text.split(" ± ")[1] + " mm" : null);
            targets.add(target);
        }
        show(positioner);
    }

    @AfterEach
    void close() {
        bench.clear();
        bench.view("pitchstack.ui.views.target");
    }

    /** 3 · 50 − 49 = 101 and 4 · 50 + 49 = 249: from 0 12 s, then one tooth and two, 11 s. */
    @Test
    void listsWhatEachTargetComesTo() {
        awaits("All 2 targets are reached, beginning at 0.000 mm. Effort of all moves 23 s. One after another costs the same.");
        assertEquals("1|First hole|10.1 mm|0.000 mm|12 s|10.100 mm|no|Rack 3 · Fine stage −1||", row(0));
        assertEquals("2|Second hole|24.9 mm|0.000 mm|11 s|24.900 mm|no|Rack 4 · Fine stage 1|0.02 mm|", row(1));
        hands.picture(shell, "list");
        choose("Order", "Each from where the stages stand");
        awaits("All 2 targets are reached, each from 0.000 mm.");
        assertEquals("13 s", cell(1, "Effort"));
    }

    @Test
    void addsTargetsAsTheyAreTyped() {
        hands.focus(table());
        hands.key(0, SWT.INSERT);
        hands.type("15");
        hands.enter(0);
        hands.until("it is in the list", () -> positions().equals("10.1 mm, 24.9 mm, 15 mm"));
        hands.type("1 1/2 in");
        hands.enter(0);
        hands.until("it is in the list", () -> positions().equals("10.1 mm, 24.9 mm, 15 mm, 1 1/2 in"));
        hands.until("it is planned", () -> cell(3, "Reached").equals("38.100 mm"));
        hands.stroke(SWT.ESC);
        hands.until("nothing is typed any more", () -> cells().isEmpty());
        hands.chord(SWT.MOD1, 'z');
        hands.chord(SWT.MOD1, 'z');
        hands.until("both are taken back", () -> positions().equals("10.1 mm, 24.9 mm"));
    }

    @Test
    void keepsTheRowThatIsTypedInSight() {
        show(IntStream.range(1, 25).mapToObj(Integer::toString).toArray(String[]::new));
        hands.focus(table());
        hands.key(0, SWT.INSERT);
        for (int row = 25; row < 28; row++) {
            int rows = row;
            hands.type("30");
            hands.enter(0);
            hands.until("it is in the list", () -> session.axis().getTargets().size() == rows);
            hands.until("it is planned", () -> !cell(rows - 1, "Reached").isEmpty());
            hands.until("the next row is typed", () -> cells().size() == 1);
            hands.until("it is in sight", () -> cells().size() == 1
                    && cells().get(0).getBounds().y + cells().get(0).getSize().y <= table().getClientArea().height);
        }
        hands.picture(shell, "list-long");
    }

    @Test
    void changesACellInPlaceAndKeepsWhatItCannotRead() {
        select(0);
        hands.key(0, SWT.F2);
        hands.type("20 um");
        hands.enter(0);
        hands.until("it is changed", () -> positions().equals("20 um, 24.9 mm"));
        hands.until("it is planned", () -> cell(0, "Error").equals("−0.020 mm"));
        assertEquals("Change position of “First hole”", session.history().getUndoCommand().getLabel());
        hands.key(0, SWT.F2);
        hands.type("ten");
        hands.enter(0);
        awaits("“ten” is not a length");
        assertEquals("ten", cells().get(0).getText(), "what was typed stays");
        assertEquals("20 um, 24.9 mm", positions());
        hands.picture(shell, "list-bad-entry");
        hands.stroke(SWT.ESC);
        hands.until("the sentence is gone", () -> !says("“ten” is not a length"));
        hands.chord(SWT.MOD1, 'z');
        hands.until("it is taken back", () -> positions().equals("10.1 mm, 24.9 mm"));
    }

    @Test
    void goesFromCellToCellWithTheTabKey() {
        select(0);
        hands.key(0, SWT.F2);
        hands.type("5");
        tab();
        hands.type("0.2");
        tab();
        hands.type("deep");
        tab();
        hands.type("Other");
        hands.enter(0);
        hands.until("all is there", () -> "Other".equals(session.axis().getTargets().get(1).getName()));
        Target first = session.axis().getTargets().get(0);
        assertEquals("5 mm, 0.2 mm, deep", first.getPosition() + ", " + first.getTolerance() + ", " + first.getNote());
        for (int i = 0; i < 4; i++) {
            session.history().undo();
        }
        assertEquals("10.1 mm", first.getPosition());
        assertFalse(session.isDirty(), "each cell is one change");
    }

    @Test
    void movesDuplicatesAndDeletesByKeysAndTakesItBack() {
        show("10", "20", "30");
        select(0);
        hands.key(SWT.ALT, SWT.ARROW_DOWN);
        hands.until("it is moved", () -> positions().equals("20 mm, 10 mm, 30 mm"));
        hands.key(SWT.ALT, SWT.ARROW_DOWN);
        hands.until("it is moved on", () -> positions().equals("20 mm, 30 mm, 10 mm"));
        hands.chord(SWT.CTRL, 'd');
        hands.until("it is there twice", () -> positions().equals("20 mm, 30 mm, 10 mm, 10 mm"));
        hands.chord(SWT.CTRL, 'a');
        hands.until("all are selected", () -> says("4 targets are selected."));
        hands.key(0, SWT.DEL);
        hands.until("all are gone", () -> positions().isEmpty());
        awaits("Type a position into the last row");
        for (int i = 0; i < 4; i++) {
            hands.chord(SWT.MOD1, 'z');
        }
        hands.until("all is taken back", () -> positions().equals("10 mm, 20 mm, 30 mm"));
        for (int i = 0; i < 4; i++) {
            session.history().redo();
        }
        assertEquals("", positions());
    }

    /**
     * 10 ± 0.1 is cheapest at [2, 0], 6 s, but then 10.1 costs one tooth of each, 10 s; by way of [3, −1] both cost
     * 12 s.
     */
    @Test
    void choosesTheSettingsTogetherAndSaysWhatThatSaves() {
        show("10 ± 0.1", "10.1");
        awaits("Effort of all moves 12 s. One after another costs 16 s, so that this saves 4 s.");
        assertEquals("+0.100 mm", cell(0, "Error"));
        assertEquals("0 s", cell(1, "Effort"));
        choose("Order", "One after another");
        awaits("Effort of all moves 16 s.");
        assertEquals("6 s, 10 s", cell(0, "Effort") + ", " + cell(1, "Effort"));
        choose("Order", "Each from where the stages stand");
        hands.until("each is planned by itself", () -> cell(1, "Effort").equals("12 s"));
    }

    /** Rack 10, 1, 9: as given 14 + 13 + 12 s; upwards 5 + 12 + 5 s, and every other order turns back. */
    @Test
    void findsTheCheapestOrderAndShowsItsTurns() {
        show("50", "5", "45");
        awaits("Effort of all moves 39 s.");
        choose("Order", "Cheapest in any order");
        awaits("Effort of all moves 22 s. One after another costs 39 s, so that this saves 17 s. No order costs less.");
        assertEquals("3, 1, 2", turns());
        sort("Turn");
        hands.until("the rows stand in turn", () -> turns().equals("1, 2, 3"));
        assertEquals("2, 3, 1", column("#"));
        assertEquals("50 mm, 5 mm, 45 mm", positions(), "the list itself is as it was");
        hands.picture(shell, "list-free");
        sort("#");
        hands.until("the rows stand as in the list", () -> turns().equals("3, 1, 2"));
    }

    @Test
    void saysWhyATargetIsNotReachedWithTheNearestOnBothSides() {
        show("10.15 ± 0.01", "9000");
        awaits("0 of 2 targets are reached, 2 are not");
        assertEquals("not reached", cell(0, "Error"));
        assertEquals("between steps; nearest 10.100 mm below, 10.200 mm above", cell(0, "Setting, or why not"));
        assertTrue(cell(1, "Setting, or why not").startsWith("beyond the travel; nearest "), cell(1, "Setting, or why not"));
        select(0);
        hands.until("both neighbours are offered", () -> buttons("Apply").size() == 2);
    }

    @Test
    void previewsTheSettingOnlyWhileTheViewIsUsed() {
        select(1);
        hands.until("it is previewed", () -> session.preview().equals(Optional.of(Setting.of(4, 1))));
        assertEquals(Setting.of(0, 0), session.analysis().current());
        assertTrue(says("from target 1 “First hole”"));
        bench.page().activate(bench.editor());
        hands.until("the preview is gone", () -> session.preview().isEmpty());
        assertFalse(session.isDirty());
    }

    @Test
    void setsOneTargetAfterTheOtherWithoutChangingThePlan() {
        show("10 ± 0.1", "10.1", "20");
        hands.until("it is planned", () -> cell(2, "Effort").equals("10 s"));
        select(0);
        hands.enter(SWT.CTRL | SWT.SHIFT);
        awaitSetting(Setting.of(3, -1));
        hands.until("it is ticked", () -> cell(0, "#").equals("✓ 1"));
        hands.until("the next is selected", () -> table().getSelectionIndex() == 1);
        hands.until("it is planned again", () -> cell(0, "Effort").equals("12 s"));
        hands.enter(SWT.CTRL | SWT.SHIFT);
        hands.until("the last is selected", () -> table().getSelectionIndex() == 2);
        awaitSetting(Setting.of(3, -1));
        hands.enter(SWT.CTRL);
        awaitSetting(Setting.of(4, 0));
        hands.until("all are ticked", () -> column("#").equals("✓ 1, ✓ 2, ✓ 3"));
        hands.chord(SWT.MOD1, 'z');
        awaitSetting(Setting.of(3, -1));
        hands.until("the last is not ticked any more", () -> column("#").equals("✓ 1, ✓ 2, 3"));
        assertEquals("12 s", cell(0, "Effort"), "the plan still begins where it began");
        hands.chord(SWT.MOD1, 'z');
        awaitSetting(Setting.of(0, 0));
        assertFalse(session.isDirty(), "each move is one change");
    }

    @Test
    void plansAgainWhenAStageOrTheAxisChanges() {
        session.run(new SetValue(session.axis().getStages().get(0), Literals.STAGE__INDEX, 3, "Move"));
        hands.until("it is planned from there", () -> says("beginning at 15.000 mm"));
        assertEquals("5 s", cell(0, "Effort"));
        session.run(new SetValue(session.axis().getStages().get(1), Literals.STAGE__PITCH, "4.8 mm", "Change pitch"));
        hands.until("it is planned for the new pitch", () -> cell(0, "Error").equals("not reached"));
        session.run(new SetValue(session.axis().getStages().get(1), Literals.STAGE__PITCH, "wrong", "Spoil the pitch"));
        awaits("No list can be planned on this axis before this is mended");
        session.history().undo();
        session.history().undo();
        hands.until("it is planned as before", () -> cell(0, "Error").equals("0.000 mm"));
    }

    /** Line 3 has no number, line 5 none either; in the header the unit is the inch, 25.4 mm. */
    @Test
    void pastesWhatASpreadsheetCopiesAndNamesTheBadRows() {
        clip("Name\tPosition (in)\tNote\nSlot\t1,5\tfirst\nBad\ttwo\t\nEdge\t10 mm\t\nNone\t\t\n");
        hands.focus(table());
        List<String> said = new ArrayList<>();
        hands.onceAsked(dialog -> {
            hands.picture(dialog, "list-paste");
            hands.all(dialog, Label.class, Label::isVisible).forEach(label -> said.add(label.getText()));
            hands.focus(hands.the(dialog, Button.class, Button::isVisible));
            hands.type(" ");
        });
        hands.chord(SWT.CTRL, 'v');
        hands.until("the dialog was read", () -> !said.isEmpty());
        String all = String.join("\n", said);
        assertTrue(all.contains("2 targets were added as one change; 2 rows of what was copied could not be read."), all);
        assertTrue(all.contains("Line 3: “two”"), all);
        assertTrue(all.contains("Line 5: This row has no position."), all);
        assertEquals("10.1 mm, 24.9 mm, 38.100 mm, 10.000 mm", positions());
        assertEquals("first", session.axis().getTargets().get(2).getNote());
        assertEquals("Paste 2 targets", session.history().getUndoCommand().getLabel());
        hands.focus(table());
        hands.chord(SWT.MOD1, 'z');
        hands.until("all of it is taken back", () -> positions().equals("10.1 mm, 24.9 mm"));
    }

    @Test
    void takesColumnsWithoutAHeaderInTheOrderOfTheList() {
        clip("Slot\t30\t0.1\nEdge\t31\t\n");
        hands.focus(table());
        hands.chord(SWT.CTRL, 'v');
        hands.until("they are there", () -> positions().equals("10.1 mm, 24.9 mm, 30.000 mm, 31.000 mm"));
        assertEquals("Slot", session.axis().getTargets().get(2).getName());
        assertEquals("0.100 mm", session.axis().getTargets().get(2).getTolerance());
    }

    @Test
    void copiesRowsWithTheirAnswersSoThatTheyCanBePastedAgain() {
        hands.until("it is planned", () -> !cell(1, "Effort").isEmpty());
        hands.focus(table());
        hands.chord(SWT.CTRL, 'a');
        hands.until("both are selected", () -> says("2 targets are selected."));
        hands.chord(SWT.CTRL, 'c');
        hands.until("it is on the clipboard", () -> clip().startsWith("name\tposition"));
        assertEquals(List.of("name\tposition\ttolerance\tnote\treached\terror\teffort\tworn teeth\tsetting, or why not",
                "First hole\t10.1 mm\t\t\t10.100 mm\t0.000 mm\t12 s\tno\tRack 3 · Fine stage -1",
                "Second hole\t24.9 mm\t0.02 mm\t\t24.900 mm\t0.000 mm\t11 s\tno\tRack 4 · Fine stage 1"),
                clip().lines().toList());
        hands.chord(SWT.CTRL, 'v');
        hands.until("they are there twice", () -> session.axis().getTargets().size() == 4);
        assertEquals("0.020 mm", session.axis().getTargets().get(3).getTolerance());
    }

    @Test
    void exportsThePlanToAFile(@TempDir Path folder) throws IOException {
        hands.until("it is planned", () -> !cell(1, "Effort").isEmpty());
        Path out = folder.resolve("plan.csv");
        FileChooser.answer("Export Plan", out, () -> tool("Export…"));
        hands.until("it is written", () -> Files.exists(out));
        List<String> lines = Files.readAllLines(out);
        assertEquals("stop,name,target (mm),tolerance (mm),position (mm),error (mm),Rack index,Fine stage index,effort (s),worn,"
                + "why not", lines.get(0));
        assertEquals("2,Second hole,24.9,0.02,24.9,0,4,1,11,,", lines.get(2));
    }

    /** Forty targets with hundreds of settings each take seconds in a free order. */
    @Test
    void stopsALongPlanAndGoesOnWhenAsked() {
        show(IntStream.range(0, 40).mapToObj(i -> (i * 7919 % 400) + " ± 8").toArray(String[]::new));
        hands.until("it is planned", () -> says("Effort of all moves"));
        choose("Order", "Cheapest in any order");
        hands.until("it takes long", () -> buttons("Stop").size() == 1);
        hands.picture(shell, "list-busy");
        assertTrue(!cell(0, "Effort").isEmpty(), "the old answers stay");
        hands.focus(table());
        hands.stroke(SWT.ESC);
        awaits("Stopped: what is shown in grey is from before.");
        assertEquals(0, buttons("Stop").size());
        choose("Order", "One after another");
        awaits("Effort of all moves");
    }

    private void tool(String text) {
        ToolItem item = hands.all(shell, ToolBar.class, ToolBar::isVisible).stream()
                .flatMap(bar -> Arrays.stream(bar.getItems())).filter(i -> i.getText().equals(text)).findFirst().orElseThrow();
        item.notifyListeners(SWT.Selection, new Event());
    }

    private void clip(String text) {
        Clipboard clipboard = new Clipboard(shell.getDisplay());
        clipboard.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
    }

    private String clip() {
        Clipboard clipboard = new Clipboard(shell.getDisplay());
        Object text = clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        return String.valueOf(text);
    }

    private void awaitSetting(Setting setting) {
        hands.until("the stages stand at " + setting, () -> session.analysis().current().equals(setting));
    }

    private void select(int row) {
        hands.focus(table());
        hands.key(0, SWT.HOME);
        if (table().getSelectionCount() == 0) {
            hands.type(" ");
        }
        for (int i = 0; i < row; i++) {
            hands.key(0, SWT.ARROW_DOWN);
        }
        hands.until("row " + row + " is selected", () -> Arrays.equals(table().getSelectionIndices(), new int[] {row}));
    }

    private void tab() {
        hands.stroke(SWT.TAB);
    }

    private void choose(String combo, String item) {
        Combo box = hands.the(shell, Combo.class, c -> Arrays.asList(c.getItems()).contains(item));
        hands.focus(box);
        int way = box.indexOf(item) - box.getSelectionIndex();
        for (int i = 0; i < Math.abs(way); i++) {
            hands.key(0, way > 0 ? SWT.ARROW_DOWN : SWT.ARROW_UP);
        }
        hands.until(combo + " is " + item, () -> box.getText().equals(item));
    }

    private void sort(String title) {
        Arrays.stream(table().getColumns()).filter(c -> c.getText().equals(title)).findFirst().orElseThrow()
                .notifyListeners(SWT.Selection, new Event());
    }

    private Table table() {
        return hands.the(shell, Table.class, this::isList);
    }

    private boolean isList(Table table) {
        return table.isVisible() && table.getColumnCount() == 11;
    }

    private List<Text> cells() {
        return hands.all(table(), Text.class, Text::isVisible);
    }

    private String row(int row) {
        return Arrays.stream(table().getColumns()).filter(c -> c.getWidth() > 0)
                .map(c -> table().getItem(row).getText(table().indexOf(c))).collect(Collectors.joining("|"));
    }

    private String cell(int row, String title) {
        int column = Arrays.stream(table().getColumns()).map(c -> c.getText()).toList().indexOf(title);
        return table().getItemCount() <= row ? "" : table().getItem(row).getText(column);
    }

    /** The texts of a column, without the row for a new target. */
    private String column(String title) {
        return IntStream.range(0, table().getItemCount() - 1).mapToObj(i -> cell(i, title))
                .collect(Collectors.joining(", "));
    }

    private String turns() {
        return column("Turn");
    }

    private String positions() {
        return session.axis().getTargets().stream().map(Target::getPosition).collect(Collectors.joining(", "));
    }

    private List<Button> buttons(String text) {
        return hands.all(shell, Button.class, b -> b.isVisible() && b.getText().equals(text));
    }

    private void awaits(String part) {
        hands.until("it says " + part, () -> says(part));
    }

    private boolean says(String part) {
        return !hands.all(shell, Label.class, l -> l.isVisible() && l.getText().contains(part)).isEmpty();
    }
}
