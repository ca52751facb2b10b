// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.core.stack.Setting;
import pitchstack.edit.AddElement;
import pitchstack.edit.NewStack;
import pitchstack.edit.Session;
import pitchstack.edit.SetValue;
import pitchstack.model.PitchstackPackage.Literals;
import pitchstack.model.Target;

/**
 * A target is typed, its moves are read, applied and taken back. Expected settings are those of the equation
 * 50 a + 49 b = x in tenths of a millimetre, efforts those of 4 s a stage and 1 s a tooth.
 */
class TargetViewTest {
    private final Hands hands = new Hands();
    private Bench bench;
    private Shell shell;
    private Session session;

    @BeforeEach
    void open(@TempDir Path folder) {
        bench = new Bench(folder);
        shell = bench.shell();
        session = bench.open("Drill table", Stacks.millimetres());
        bench.view("org.eclipse.ui.views.PropertySheet");
        bench.view("pitchstack.ui.views.target");
    }

    @AfterEach
    void close() {
        bench.clear();
    }

    @Test
    void readsAppliesAndTakesBackTheMovesToATypedTarget() {
        awaits("Type a target");
        hands.picture(shell, "target-empty");
        hands.focus(target());
        hands.type("10.1");
        awaitSteps("1. Rack: 3 teeth forward, from 0 to 3.", "2. Fine stage: 1 tooth back, from 0 to −1.");
        awaits("Effort 12 s");
        awaits("2 steps lead to 10.100 mm, exactly on the target.");
        hands.picture(shell, "target-reached");
        hands.enter(0);
        awaitApply();
        assertEquals(Setting.of(0, 0), session.analysis().current(), "one Enter only plans");
        hands.enter(0);
        awaitSetting(Setting.of(3, -1));
        awaitSteps("The stages stand there already.");
        awaits("Stands at 10.100 mm, exactly on the target.");
        awaits("stands at 10.100 mm");
        hands.chord(SWT.MOD1, 'z');
        awaitSetting(Setting.of(0, 0));
        awaitSteps("1. Rack: 3 teeth forward, from 0 to 3.", "2. Fine stage: 1 tooth back, from 0 to −1.");
        hands.type("15");
        awaitSteps("1. Rack: 3 teeth forward, from 0 to 3.");
        assertEquals("15", target().getText(), "the next target is typed over the last");
    }

    @Test
    void saysUnderTheFieldsWhatItCannotRead() {
        hands.focus(target());
        hands.type("ten");
        hands.until("the sentence is there", () -> says("“ten” is not a length"));
        hands.picture(shell, "target-bad");
        target().selectAll();
        hands.type("10");
        hands.until("the sentence is gone", () -> !says("is not a length"));
        hands.focus(tolerance());
        hands.type("-1");
        hands.until("the tolerance is refused", () -> says("A tolerance of -1 is not allowed"));
        assertFalse(session.isDirty());
    }

    @Test
    void offersBothNeighboursOfAnUnreachableTargetAndAppliesOne() {
        hands.focus(target());
        hands.type("10.15");
        hands.focus(tolerance());
        hands.type("0.01");
        hands.until("the reason is there",
                () -> says("10.150 mm lies between 10.100 mm and 10.200 mm"));
        hands.picture(shell, "target-between");
        hands.enter(0);
        hands.enter(0);
        assertEquals(Setting.of(0, 0), session.analysis().current(), "which neighbour must be chosen");
        List<Button> apply = hands.all(shell, Button.class, b -> b.isVisible() && b.getText().equals("Apply"));
        assertEquals(2, apply.size());
        hands.focus(apply.get(1));
        hands.type(" ");
        awaitSetting(Setting.of(4, -2));
        session.history().undo();
        assertEquals(Setting.of(0, 0), session.analysis().current());
    }

    @Test
    void appliesTheChosenOneOfSeveralChoices() {
        hands.focus(target());
        hands.type("10.1");
        hands.focus(tolerance());
        hands.type("0.15");
        hands.until("the choices are there", () -> hands.all(shell, Table.class, this::isChoices).size() == 1);
        Table choices = hands.the(shell, Table.class, this::isChoices);
        assertEquals(List.of("10.000 mm", "10.100 mm", "10.200 mm"),
                Arrays.stream(choices.getItems()).map(row -> row.getText(0)).toList());
        assertEquals(List.of("6 s", "12 s", "14 s"), Arrays.stream(choices.getItems()).map(row -> row.getText(2)).toList());
        hands.focus(choices);
        hands.key(0, SWT.ARROW_DOWN);
        awaitSteps("1. Rack: 3 teeth forward, from 0 to 3.", "2. Fine stage: 1 tooth back, from 0 to −1.");
        hands.picture(shell, "target-choices");
        hands.enter(SWT.MOD1);
        awaitSetting(Setting.of(3, -1));
    }

    /** 20 µm up from 0 lies within 0.05 mm of 0; 0.2 mm down is two teeth apart, 5 · 2 − 4.9 · 2 = 0.2. */
    @Test
    void plansADistanceFromWhereTheStagesStand() {
        hands.focus(target());
        hands.type("5");
        awaitSteps("1. Rack: 1 tooth forward, from 0 to 1.");
        hands.enter(SWT.MOD1);
        awaitSetting(Setting.of(1, 0));
        Button distance = hands.the(shell, Button.class, b -> b.getText().equals("Distance from here"));
        hands.focus(distance);
        hands.type(" ");
        hands.until("a distance is asked for", () -> says("Distance") && distance.getSelection());
        hands.focus(target());
        target().selectAll();
        hands.type("20 um");
        awaits("0.020 mm up from 5.000 mm: to 5.020 mm.");
        awaitSteps("The stages stand there already.");
        awaits("Stands at 5.000 mm, 0.020 mm below the target.");
        target().selectAll();
        hands.type("-0.2");
        awaits("0.200 mm down from 5.000 mm: to 4.800 mm.");
        awaitSteps("1. Rack: 2 teeth back, from 1 to −1.", "2. Fine stage: 2 teeth forward, from 0 to 2.");
        hands.picture(shell, "target-distance");
        assertFalse(hands.the(shell, Button.class, b -> b.getText().startsWith("Save")).isEnabled(),
                "a distance is no place to keep");
        hands.enter(SWT.MOD1);
        awaitSetting(Setting.of(-1, 2));
        awaits("0.200 mm down from 4.800 mm: to 4.600 mm.");
        target().selectAll();
        hands.type("99999999 mm");
        awaits("more than the program can hold");
    }

    /**
     * 50 a + 49 b = 100 + d tenths of a millimetre at a = 2 + d, b = −d, for d from −10 to 10; and once more 49 teeth up and
     * 50 down, which the 48 teeth of the fine stage leave for d up to −2: 21 + 9 settings.
     */
    @Test
    void listsMoreChoicesWhenAsked() {
        hands.focus(target());
        hands.type("10");
        hands.focus(tolerance());
        hands.type("1");
        awaits("The first 6 choices within the tolerance");
        Table choices = hands.the(shell, Table.class, this::isChoices);
        assertTrue(choices.getItem(0).getText(4).matches("Ra.* 2 · Fi.* 0"), choices.getItem(0).getText(4));
        hands.focus(hands.the(shell, Button.class, b -> b.getText().equals("More choices")));
        hands.type(" ");
        awaits("The first 26 choices within the tolerance");
        hands.type(" ");
        awaits("All 30 choices within the tolerance");
        assertEquals(30, choices.getItemCount());
    }

    /** Where the stages stand as they did, the choice that was made stays too. */
    @Test
    void keepsTheChosenOneAfterItsMoveWasShown() {
        hands.focus(target());
        hands.type("10.1");
        hands.focus(tolerance());
        hands.type("0.15");
        hands.until("the choices are there", () -> hands.all(shell, Table.class, this::isChoices).size() == 1);
        Table choices = hands.the(shell, Table.class, this::isChoices);
        hands.focus(choices);
        hands.key(0, SWT.ARROW_DOWN);
        awaitSteps("1. Rack: 3 teeth forward, from 0 to 3.", "2. Fine stage: 1 tooth back, from 0 to −1.");
        session.play(Setting.of(1, 0));
        session.play(Setting.of(3, 0));
        session.preview(null);
        hands.settle();
        assertEquals(1, choices.getSelectionIndex());
        assertEquals(Setting.of(3, -1), session.proposal().orElseThrow().setting());
        hands.enter(SWT.MOD1);
        awaitSetting(Setting.of(3, -1));
    }

    /** Seen with names that fill the column alone: every number and every index has to be in sight all the same. */
    @Test
    void cutsLongNamesAndNoNumbersInTheTableOfChoices() {
        session.run(new SetValue(session.axis().getStages().get(0), Literals.STAGE__NAME,
                "Hardened rack of the long bed under the carriage", "Rename"));
        session.run(new SetValue(session.axis().getStages().get(1), Literals.STAGE__NAME,
                "Printed pair on the left side of the table", "Rename"));
        hands.focus(target());
        hands.type("10.1");
        hands.focus(tolerance());
        hands.type("0.15");
        hands.until("the choices are there", () -> hands.all(shell, Table.class, this::isChoices).size() == 1);
        Table choices = hands.the(shell, Table.class, this::isChoices);
        int width = Arrays.stream(choices.getColumns()).mapToInt(TableColumn::getWidth).sum();
        assertTrue(width <= choices.getClientArea().width, width + " of " + choices.getClientArea().width);
        assertTrue(choices.getItem(1).getText(4).matches("Ha.*… 3 · Pr.*… −1"), choices.getItem(1).getText(4));
        Rectangle row = choices.getItem(1).getBounds();
        Event over = new Event();
        over.x = row.x + 2;
        over.y = row.y + row.height / 2;
        choices.notifyListeners(SWT.MouseMove, over);
        String full = "Hardened rack of the long bed under the carriage 3 · Printed pair on the left side of the table −1";
        assertEquals(full, choices.getToolTipText());
        hands.focus(choices);
        choices.select(1);
        hands.chord(SWT.CTRL, 'c');
        hands.until("the names are copied in full", () -> clip().endsWith("\t" + full));
    }

    private String clip() {
        Clipboard clipboard = new Clipboard(shell.getDisplay());
        Object text = clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        return String.valueOf(text);
    }

    /** In a column a fifth as wide as the window, as on a small screen with large letters. */
    @Test
    void wrapsInANarrowColumnInsteadOfRunningOutOfIt() {
        hands.focus(target());
        hands.type("10.1");
        awaits("2 steps lead to 10.100 mm");
        Composite content = target().getParent();
        Composite scroll = content.getParent();
        int before = scroll.getSize().x;
        for (int width : new int[] {before, 260}) {
            scroll.setSize(width, scroll.getSize().y);
            hands.settle();
            for (Control control : hands.all(content, Control.class, Control::isVisible)) {
                Rectangle bounds = shell.getDisplay().map(control.getParent(), content, control.getBounds());
                assertTrue(bounds.x + bounds.width <= content.getClientArea().width, control + " ends at "
                        + (bounds.x + bounds.width) + " of " + content.getClientArea().width);
            }
        }
        scroll.setSize(before, scroll.getSize().y);
    }

    @Test
    void warnsOfWornTeethAndRefusesThemWhereAsked() {
        session.run(AddElement.wornRange(session.axis().getStages().get(1).getBaseRow(), NewStack.wornRange(30)));
        hands.focus(target());
        hands.type("10.1");
        hands.until("the warning is there", () -> says("This stands on worn teeth of “Fine stage”"));
        hands.picture(shell, "target-worn");
        Combo worn = hands.the(shell, Combo.class, c -> c.getItemCount() == 3);
        hands.focus(worn);
        hands.key(0, SWT.ARROW_DOWN);
        hands.key(0, SWT.ARROW_DOWN);
        hands.until("the reason is there", () -> says("could be set only over teeth"));
    }

    @Test
    void picksSavesAndDeletesTargetsOfTheFile() {
        hands.focus(saved());
        hands.key(0, SWT.HOME);
        hands.key(0, SWT.ARROW_DOWN);
        awaitSteps("1. Rack: 4 teeth forward, from 0 to 4.", "2. Fine stage: 1 tooth forward, from 0 to 1.");
        hands.until("it is filled in", () -> target().getText().equals("24.9 mm"));
        assertEquals("0.02 mm", tolerance().getText());
        hands.until("its properties are shown",
                () -> hands.all(shell, Tree.class, t -> t.isVisible() && shows(t, "Second hole")).size() > 0);
        hands.enter(0);
        awaitApply();
        hands.enter(0);
        awaitSetting(Setting.of(4, 1));
        session.history().undo();
        hands.key(0, SWT.DEL);
        hands.until("it is gone", () -> session.axis().getTargets().size() == 1);
        assertEquals("First hole", session.axis().getTargets().get(0).getName());
        session.history().undo();
        assertEquals(2, session.axis().getTargets().size());
        hands.until("it is back", () -> saved().getItemCount() == 2);
        target().selectAll();
        hands.focus(target());
        target().selectAll();
        hands.type("15");
        save("Third hole");
        hands.until("it is saved", () -> session.axis().getTargets().size() == 3);
        Target third = session.axis().getTargets().get(2);
        assertEquals("Third hole", third.getName());
        assertEquals("15 mm", third.getPosition(), "kept with the unit that was meant");
        assertEquals("0.02 mm", third.getTolerance());
    }

    private void save(String name) {
        hands.until("it can be saved", () -> hands.the(shell, Button.class, b -> b.getText().startsWith("Save")).isEnabled());
        hands.focus(hands.the(shell, Button.class, b -> b.getText().startsWith("Save")));
        hands.onceAsked(dialog -> {
            hands.picture(dialog, "target-save");
            Text field = hands.the(dialog, Text.class, t -> t.getEditable());
            hands.focus(field);
            field.selectAll();
            hands.type(name);
            hands.enter(0);
        });
        hands.type(" ");
    }

    @Test
    void followsAStageThatIsBeingDragged() {
        hands.focus(target());
        hands.type("10.1");
        awaitSteps("1. Rack: 3 teeth forward, from 0 to 3.", "2. Fine stage: 1 tooth back, from 0 to −1.");
        session.preview(Setting.of(5, -1));
        awaits("stands at 20.100 mm");
        awaitSteps("1. Rack: 2 teeth back, from 5 to 3.");
        session.preview(null);
        awaitSteps("1. Rack: 3 teeth forward, from 0 to 3.", "2. Fine stage: 1 tooth back, from 0 to −1.");
    }

    @Test
    void remembersWhatWasTypedForEachDocument() {
        hands.focus(target());
        hands.type("10.1");
        bench.open("Another", Stacks.millimetres());
        assertEquals("", target().getText());
        bench.reopen("Drill table");
        assertEquals("10.1", target().getText());
        bench.clear();
        awaits("Open a stack");
        hands.picture(shell, "nothing-open");
        bench.reopen("Drill table");
        assertEquals("10.1", target().getText(), "closed and opened again");
    }

    @Test
    void saysWhatStandsInTheWayOfPlanning() {
        hands.focus(target());
        hands.type("10.1");
        session.run(new SetValue(session.axis().getStages().get(1), Literals.STAGE__PITCH, "wrong", "Spoil the pitch"));
        hands.until("it says so", () -> says("Axis “Axis” cannot be planned on before this is mended"));
        awaits("“wrong” is not a length");
        awaits("Position cannot be told");
        session.history().undo();
        awaitSteps("1. Rack: 3 teeth forward, from 0 to 3.", "2. Fine stage: 1 tooth back, from 0 to −1.");
        hands.until("the drawing tells the position again", () -> !says("Position cannot be told"));
    }

    /** 45 a + 32 b = 1 with the least |a| + |b| at a = 5, b = −7. */
    @Test
    void plansInDegreesOnARotaryAxis() {
        session = bench.open("Index table", Stacks.table());
        bench.view("pitchstack.ui.views.target");
        hands.focus(target());
        hands.type("0.25");
        awaitSteps("1. Rack: 5 teeth forward, from 0 to 5.", "2. Fine stage: 7 teeth back, from 0 to −7.");
        awaits("°");
        hands.picture(shell, "target-rotary");
    }

    @Test
    void plansOnTheAxisThatIsLookedAt() {
        session = bench.open("Plate", Stacks.plate());
        bench.view("pitchstack.ui.views.target");
        awaits("Axis “X” stands at 0.000 mm");
        hands.focus(target());
        hands.type("10.1");
        session.look(session.positioner().getAxes().get(1));
        awaits("Axis “Y” stands at 0.000 mm");
        assertEquals("", target().getText(), "each axis has its own target");
        hands.focus(target());
        hands.type("5");
        awaitSteps("1. Rack: 1 tooth forward, from 0 to 1.");
        hands.enter(SWT.MOD1);
        awaitSetting(Setting.of(1, 0));
        assertEquals(0, session.positioner().getAxes().get(0).getStages().get(0).getIndex());
    }

    private static boolean shows(Tree properties, String value) {
        return properties.getColumnCount() == 2 && Arrays.stream(properties.getItems())
                .flatMap(group -> Arrays.stream(group.getItems())).anyMatch(item -> item.getText(1).equals(value));
    }

    private Text target() {
        return field("Where the carriage");
    }

    private Text tolerance() {
        return field("The largest error");
    }

    private Text field(String tooltip) {
        return hands.the(shell, Text.class, t -> t.getToolTipText() != null && t.getToolTipText().startsWith(tooltip));
    }

    private Table saved() {
        return hands.the(shell, Table.class, t -> t.getColumnCount() == 3);
    }

    private boolean isChoices(Table table) {
        return table.isVisible() && table.getColumnCount() == 5 && table.getColumn(0).getText().equals("Position");
    }

    private void awaitSteps(String... lines) {
        String expected = String.join("\n", lines);
        hands.until("the steps are " + expected, () -> hands.all(shell, StyledText.class, t -> t.isVisible()).stream()
                .anyMatch(t -> t.getText().replace('\u00A0', ' ').equals(expected)));
    }

    /** An answer that is still being worked out cannot be applied, by Enter either. */
    private void awaitApply() {
        hands.until("the answer can be applied", () -> !hands.all(shell, Button.class, b -> b.isVisible() && b.isEnabled()
                && b.getText().equals("Apply")).isEmpty());
    }

    private void awaitSetting(Setting setting) {
        hands.until("the stages stand at " + setting, () -> session.analysis().current().equals(setting));
    }

    /** Both questions ask nothing yet, and a drag plans at once what would be planned after a pause. */
    @Test
    void invitesToTheQuestionThatIsChosenWhileAStageIsDragged() {
        awaits("Type a target");
        hands.the(shell, Button.class, b -> b.getText().equals("Position")).setSelection(false);
        Button distance = hands.the(shell, Button.class, b -> b.getText().equals("Distance from here"));
        distance.setSelection(true);
        distance.notifyListeners(SWT.Selection, new Event());
        session.preview(Setting.of(1, 0));
        awaits("Type how far to move from where the stages stand");
    }

    private void awaits(String part) {
        hands.until("it says " + part, () -> says(part));
    }

    private boolean says(String part) {
        return !hands.all(shell, Label.class, l -> l.isVisible() && l.getText().contains(part)).isEmpty();
    }
}
