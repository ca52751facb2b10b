// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.ui.IEditorPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.core.stack.Setting;
import pitchstack.edit.Session;
import pitchstack.edit.SessionListener.Change;
import pitchstack.model.Positioner;
import pitchstack.model.Stage;
import pitchstack.model.WearKind;
import pitchstack.model.WornRange;

/** Moving stages by hand in the drawing. Positions: 5 mm a tooth of the rack, 4.9 mm a tooth of the pair on it. */
class SideViewTest {
    private static final String UNDO = "org.eclipse.ui.edit.undo";
    private static final String REDO = "org.eclipse.ui.edit.redo";

    @TempDir
    private Path folder;
    private IEditorPart editor;
    private Session session;
    private Sight sight;

    private void open(Positioner positioner) throws IOException {
        editor = Desk.draw(positioner, folder);
        session = editor.getAdapter(Session.class);
        sight = new Sight(session);
    }

    @AfterEach
    void close() {
        Desk.closeAll();
    }

    private Stage stage(int number) {
        return session.axis().getStages().get(number);
    }

    private String position() {
        return Desk.controls(Desk.shell(), control -> control instanceof Label label && label.isVisible()
                && label.getText().endsWith(" mm") && label.getFont().getFontData()[0].getHeight() > 14).stream()
                .map(control -> ((Label) control).getText()).findFirst().orElseThrow();
    }

    @Test
    void showsThePositionOfTheCarriage() throws IOException {
        Positioner positioner = Stacks.pair();
        positioner.getAxes().get(0).getStages().get(0).setIndex(7);
        positioner.getAxes().get(0).getStages().get(1).setIndex(-7);
        open(positioner);
        assertEquals("0.700 mm", position());
    }

    @Test
    void dragsAStageToothByToothWithThePositionFollowing() throws IOException {
        open(Stacks.pair());
        List<Integer> seen = new ArrayList<>();
        session.addListener(change -> {
            if (change == Change.PREVIEW) {
                seen.add(session.shown().index(0));
            }
        });
        Point body = sight.body(0);
        Desk.press(body.x, body.y);
        Desk.dragTo(body.x - 10, body.y);
        int sixTeeth = sight.teeth(0, 6);
        for (int dx = 1; dx <= sixTeeth; dx++) {
            Desk.dragTo(body.x + dx, body.y);
        }
        assertEquals(Setting.of(6, 0), session.shown());
        assertEquals("30.000 mm", position(), "while it is dragged");
        assertEquals(0, stage(0).getIndex(), "the document changes at the end only");
        assertFalse(editor.isDirty());
        Desk.release(body.x + sixTeeth, body.y);
        assertEquals(6, stage(0).getIndex());
        assertEquals("30.000 mm", position());
        assertTrue(editor.isDirty());
        assertEquals(List.of(1, 2, 3, 4, 5, 6), seen.stream().filter(index -> index > 0).distinct().toList(),
                "every tooth on the way");
    }

    @Test
    void carriesWhatRidesOnAStage() throws IOException {
        open(Stacks.pair());
        Point upper = sight.body(1);
        Point lower = sight.body(0);
        Desk.press(lower.x, lower.y);
        Desk.dragTo(lower.x + sight.teeth(0, 3), lower.y);
        Desk.dragTo(lower.x + sight.teeth(0, 10), lower.y);
        Desk.release(lower.x + sight.teeth(0, 10), lower.y);
        assertEquals(sight.teeth(0, 10), sight.body(1).x - upper.x, 1);
        assertEquals(0, stage(1).getIndex());
        Desk.click(upper.x + sight.teeth(0, 10), upper.y);
        assertEquals(stage(1), Desk.selected(), "the upper body is drawn where it was carried to");
    }

    @Test
    void selectsAStageByTheNameBesideItsBody() throws IOException {
        open(Stacks.pair());
        Point name = sight.nameBeside(1);
        Desk.click(name.x, name.y);
        assertEquals(stage(1), Desk.selected());
        Desk.click(name.x, name.y - 20);
        assertEquals(session.axis(), Desk.selected(), "the ground above it");
    }

    @Test
    void undoesAndRedoesADragAsOneChangeWithItsName() throws IOException {
        open(Stacks.pair());
        Point body = sight.body(1);
        Desk.press(body.x, body.y);
        for (int teeth = 1; teeth <= 9; teeth++) {
            Desk.dragTo(body.x - sight.teeth(1, teeth), body.y);
        }
        Desk.release(body.x - sight.teeth(1, 9), body.y);
        assertEquals(-9, stage(1).getIndex());
        MenuItem undo = Desk.menuItem("Edit", "Undo");
        assertEquals("Undo Move “Fine stage” to −9", Desk.plain(undo.getText()));
        Desk.command(UNDO);
        assertEquals(0, stage(1).getIndex());
        assertFalse(editor.isDirty());
        assertEquals("0.000 mm", position());
        assertEquals("Redo Move “Fine stage” to −9", Desk.plain(Desk.menuItem("Edit", "Redo").getText()));
        Desk.command(REDO);
        assertEquals(-9, stage(1).getIndex());
        assertEquals("−44.100 mm", position());
    }

    @Test
    void tellsInTheStatusLineWhatIsSoAfterUndoAndInAnotherEditor() throws IOException {
        open(Stacks.pair());
        Point body = sight.body(0);
        Desk.click(body.x, body.y);
        Desk.key(SWT.ARROW_RIGHT, 0);
        assertTrue(status().startsWith("Carriage at 5.000 mm; Rack, index +1"), status());
        Desk.command(UNDO);
        assertTrue(status().contains("at 0.000 mm; Rack, index 0"), status());
        Positioner other = Stacks.pair();
        other.getAxes().get(0).getStages().get(0).setIndex(-3);
        Desk.open(Stacks.save(other, folder.resolve("other.pitchstack")));
        assertTrue(status().contains("at −15.000 mm"), status());
        Desk.page().activate(editor);
        Desk.settle();
        assertTrue(status().contains("at 0.000 mm"), status());
        Desk.open(Stacks.save(Stacks.plate(), folder.resolve("plate.pitchstack")));
        assertTrue(status().startsWith("Axis X, carriage at "), status());
    }

    private static String status() {
        return Desk.controls(Desk.shell(), control -> control.getClass().getSimpleName().equals("StatusLine")).stream()
                .flatMap(line -> Desk.controls((Composite) line, control -> control instanceof CLabel).stream())
                .map(label -> ((CLabel) label).getText()).findFirst().orElseThrow();
    }

    @Test
    void saysThatAStageIsDraggedBeyondAStop() throws IOException {
        Positioner positioner = Stacks.pair();
        positioner.getAxes().get(0).setHigh("20 mm");
        open(positioner);
        Point body = sight.body(0);
        Desk.press(body.x, body.y);
        Desk.dragTo(body.x + sight.teeth(0, 4), body.y);
        assertFalse(shows("beyond the stop"), "20 mm is the stop itself");
        Desk.dragTo(body.x + sight.teeth(0, 6), body.y);
        assertTrue(shows("+30.000 mm from 0.000 mm, 10.000 mm beyond the stop at 20.000 mm"));
        Desk.release(body.x + sight.teeth(0, 6), body.y);
        assertTrue(shows("10.000 mm beyond the stop at 20.000 mm"));
        assertEquals(List.of("current-beyond-travel"), session.analysis().findings().stream().map(f -> f.id()).toList());
    }

    private static boolean shows(String text) {
        return !Desk.controls(Desk.shell(), control -> control instanceof Label label && label.isVisible()
                && label.getText().contains(text)).isEmpty();
    }

    @Test
    void escapePutsADraggedStageBack() throws IOException {
        open(Stacks.pair());
        Point body = sight.body(0);
        Desk.press(body.x, body.y);
        Desk.dragTo(body.x + sight.teeth(0, 4), body.y);
        Desk.dragTo(body.x + sight.teeth(0, 8), body.y);
        assertEquals(8, session.shown().index(0));
        Desk.key(SWT.ESC, SWT.BUTTON1);
        assertEquals(Setting.of(0, 0), session.shown());
        Desk.release(body.x + sight.teeth(0, 8), body.y);
        assertEquals(0, stage(0).getIndex());
        assertFalse(session.history().canUndo());
        assertEquals("0.000 mm", position());
    }

    @Test
    void stopsADragAtTheEndsOfTheIndexRange() throws IOException {
        open(Stacks.pair());
        Point body = sight.body(0);
        Desk.press(body.x, body.y);
        Desk.dragTo(body.x + 5, body.y);
        Desk.dragTo(body.x - sight.teeth(0, 60), body.y);
        assertEquals(-18, session.shown().index(0));
        Desk.release(body.x - sight.teeth(0, 60), body.y);
        assertEquals(-18, stage(0).getIndex());
    }

    @Test
    void dragsPastBarredTeethButNeverStandsOnThem() throws IOException {
        open(Stacks.barred());
        Point body = sight.body(0);
        Desk.press(body.x, body.y);
        Desk.dragTo(body.x + sight.teeth(0, 10), body.y);
        Desk.dragTo(body.x + sight.teeth(0, 45), body.y);
        assertEquals(62, session.shown().index(0), "the next usable index beyond 31 to 61");
        Desk.dragTo(body.x + sight.teeth(0, 70), body.y);
        assertEquals(70, session.shown().index(0));
        Desk.dragTo(body.x + sight.teeth(0, 30), body.y);
        assertEquals(30, session.shown().index(0));
        Desk.release(body.x + sight.teeth(0, 30), body.y);
        assertEquals(30, stage(0).getIndex());
    }

    @Test
    void arrowKeysMoveTheSelectedStageAndSelectTheNext() throws IOException {
        open(Stacks.barred());
        Desk.key(SWT.ARROW_UP, 0);
        assertEquals(stage(0), Desk.selected());
        Desk.key(SWT.ARROW_RIGHT, 0);
        assertEquals(1, stage(0).getIndex());
        Desk.key(SWT.ARROW_RIGHT, SWT.SHIFT);
        Desk.key(SWT.ARROW_RIGHT, SWT.MOD1);
        assertEquals(21, stage(0).getIndex());
        Desk.key(SWT.ARROW_RIGHT, SWT.SHIFT);
        assertEquals(62, stage(0).getIndex(), "31 to 61 are barred");
        Desk.key(SWT.ARROW_LEFT, 0);
        assertEquals(30, stage(0).getIndex());
        Desk.key(SWT.END, SWT.MOD1);
        assertEquals(88, stage(0).getIndex());
        Desk.key(SWT.ARROW_RIGHT, 0);
        assertEquals(88, stage(0).getIndex());
        Desk.key(SWT.ARROW_UP, 0);
        assertEquals(stage(1), Desk.selected());
        Desk.key(SWT.HOME, SWT.MOD1);
        assertEquals(-48, stage(1).getIndex());
        assertEquals("204.800 mm", position(), "88 · 5 − 48 · 4.9");
        Desk.key(SWT.ARROW_DOWN, 0);
        assertEquals(stage(0), Desk.selected());
        while (session.history().canUndo()) {
            Desk.command(UNDO);
        }
        assertEquals(Setting.of(0, 0), session.shown());
    }

    @Test
    void selectsStagesRowsAndWornTeethByAClick() throws IOException {
        open(Stacks.barred());
        Point label = sight.label(1);
        Desk.click(label.x, label.y);
        assertEquals(stage(1), Desk.selected());
        Point tooth = sight.baseTooth(0, 20);
        Desk.click(tooth.x, tooth.y);
        assertEquals(stage(0).getBaseRow(), Desk.selected());
        Point barred = sight.baseTooth(0, 60);
        Desk.click(barred.x, barred.y);
        assertEquals(stage(0).getBaseRow().getWorn().get(0), Desk.selected());
    }

    @Test
    void deletesTheSelectedStageOrWornTeethAndTakesItBack() throws IOException {
        open(Stacks.barred());
        Point barred = sight.baseTooth(0, 60);
        Desk.click(barred.x, barred.y);
        Desk.command("org.eclipse.ui.edit.delete");
        assertEquals(0, stage(0).getBaseRow().getWorn().size());
        Desk.command(UNDO);
        assertEquals(1, stage(0).getBaseRow().getWorn().size());
        Stage lower = stage(0);
        Point body = sight.body(0);
        Desk.click(body.x, body.y);
        Desk.command("org.eclipse.ui.edit.delete");
        assertEquals(1, session.axis().getStages().size());
        Desk.command(UNDO);
        assertEquals(lower, stage(0));
        Desk.click(body.x, body.y);
        assertEquals(lower, Desk.selected(), "it is drawn again");
    }

    @Test
    void addsAStageAboveTheSelectedOne() throws IOException {
        open(Stacks.pair());
        Desk.key(SWT.ARROW_UP, 0);
        Desk.command("pitchstack.ui.editor.addStage");
        assertEquals(3, session.axis().getStages().size());
        assertEquals("Stage 3", stage(1).getName());
        assertEquals(stage(1), Desk.selected());
        Desk.command(UNDO);
        assertEquals(2, session.axis().getStages().size());
    }

    @Test
    void marksTeethThroughADialogThatBeginsAtThePressedTooth() throws IOException {
        open(Stacks.pair());
        Point tooth = sight.baseTooth(0, 70);
        Desk.click(tooth.x, tooth.y);
        Answers.dialog("Mark Teeth", shell -> {
            List<Control> numbers = Desk.controls(shell, control -> control instanceof Spinner);
            assertEquals(70, ((Spinner) numbers.get(0)).getSelection(), 1, "a tooth is hardly a pixel wide");
            ((Spinner) numbers.get(0)).setSelection(70);
            ((Spinner) numbers.get(1)).setSelection(73);
            Button barred = (Button) Desk.controls(shell, control -> control instanceof Button button
                    && button.getText().startsWith("&barred")).get(0);
            Button worn = (Button) Desk.controls(shell, control -> control instanceof Button button
                    && button.getText().startsWith("&worn")).get(0);
            worn.setSelection(false);
            barred.setSelection(true);
        }, SWT.CR, () -> Desk.command("pitchstack.ui.editor.markTeeth"));
        WornRange range = stage(0).getBaseRow().getWorn().get(0);
        assertEquals(List.of(70, 73, WearKind.BARRED), List.of(range.getFirst(), range.getLast(), range.getKind()));
        Point marked = sight.baseTooth(0, 72);
        Desk.click(marked.x, marked.y);
        assertEquals(range, Desk.selected());
        Desk.command(UNDO);
        assertEquals(0, stage(0).getBaseRow().getWorn().size());
    }

    @Test
    void movesAStageToIndexZeroWhereItMayStand() throws IOException {
        open(Stacks.pair());
        Desk.key(SWT.ARROW_UP, 0);
        Desk.key(SWT.ARROW_RIGHT, SWT.SHIFT);
        Desk.command("pitchstack.ui.editor.zeroIndex");
        assertEquals(0, stage(0).getIndex());
        Desk.command(UNDO);
        assertEquals(10, stage(0).getIndex());
    }

    @Test
    void looksAtTheAxisOfAnElementThatIsSelectedElsewhere() throws IOException {
        open(Stacks.plate());
        assertEquals("X", session.axis().getName());
        Stage other = session.positioner().getAxes().get(1).getStages().get(1);
        editor.getSite().getSelectionProvider()
                .setSelection(new StructuredSelection(other));
        Desk.settle();
        assertEquals("Y", session.axis().getName());
        assertEquals(other, Desk.selected());
        Point body = sight.body(0);
        Desk.click(body.x, body.y);
        assertEquals(stage(0), Desk.selected());
    }
}
