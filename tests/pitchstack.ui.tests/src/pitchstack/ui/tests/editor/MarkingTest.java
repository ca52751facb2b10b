// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Spinner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.Session;
import pitchstack.model.Row;
import pitchstack.model.WearKind;
import pitchstack.model.WornRange;

/** Marking teeth of the rack of a new positioner, which has 100 base teeth; its 30 rider teeth begin over tooth 0. */
class MarkingTest {
    private static final String MARK = "pitchstack.ui.editor.markTeeth";

    @TempDir
    private Path folder;
    private Session session;
    private Sight sight;
    private Row rack;

    @BeforeEach
    void open() throws IOException {
        session = Desk.draw(Stacks.pair(), folder).getAdapter(Session.class);
        sight = new Sight(session);
        rack = session.axis().getStages().get(0).getBaseRow();
    }

    @AfterEach
    void close() {
        Desk.closeAll();
    }

    @Test
    void drawsOverTeethWithShiftAndMarksThemAsOneChange() {
        Point from = sight.baseTooth(0, 50);
        Point to = sight.baseTooth(0, 60);
        int[] asked = new int[2];
        press(from);
        drag(new Point((from.x + to.x) / 2, from.y));
        drag(to);
        Answers.dialog("Mark Teeth", shell -> {
            asked[0] = numbers(shell).get(0).getSelection();
            asked[1] = numbers(shell).get(1).getSelection();
        }, SWT.CR, () -> {
            Desk.mouse(SWT.MouseUp, to.x, to.y, 1, SWT.BUTTON1 | SWT.SHIFT);
            Desk.until("the dialog is answered", () -> !rack.getWorn().isEmpty());
        });
        assertEquals(50, asked[0], 1, "a tooth is hardly a pixel wide");
        assertEquals(60, asked[1], 1);
        WornRange range = rack.getWorn().get(0);
        assertEquals(List.of(asked[0], asked[1], WearKind.WORN), List.of(range.getFirst(), range.getLast(), range.getKind()));
        assertEquals(0, session.axis().getStages().get(0).getIndex(), "nothing was moved");
        Desk.command("org.eclipse.ui.edit.undo");
        assertTrue(rack.getWorn().isEmpty());
        assertFalse(session.isDirty());
    }

    @Test
    void escapeEndsDrawingOverTeeth() {
        Point from = sight.baseTooth(0, 50);
        press(from);
        drag(new Point(from.x + 20, from.y));
        Desk.key(SWT.ESC, SWT.BUTTON1 | SWT.SHIFT);
        Desk.mouse(SWT.MouseUp, from.x + 20, from.y, 1, SWT.BUTTON1 | SWT.SHIFT);
        Desk.settle();
        assertTrue(rack.getWorn().isEmpty());
        assertFalse(session.history().canUndo());
    }

    /** With the stage selected by a key and nothing pressed, the dialog begins with the engaged teeth, 0 to 29. */
    @Test
    void marksEngagedTeethByTheKeyboard() {
        Desk.key(SWT.ARROW_UP, 0);
        Answers.dialog("Mark Teeth", shell -> {
            assertEquals(0, numbers(shell).get(0).getSelection());
            assertEquals(29, numbers(shell).get(1).getSelection());
            numbers(shell).get(0).setSelection(20);
        }, SWT.CR, () -> Desk.command(MARK));
        assertEquals("Mark teeth 20 to 29 as worn", session.history().getUndoCommand().getLabel());
        Desk.command("org.eclipse.ui.edit.undo");
        assertTrue(rack.getWorn().isEmpty());
    }

    /** Begun with one tooth, it stays one until an end is given. */
    @Test
    void staysWithOneToothUntilAnEndIsGiven() {
        Point tooth = sight.baseTooth(0, 50);
        Desk.mouse(SWT.MouseMove, tooth.x, tooth.y, 0, 0);
        Desk.click(tooth.x, tooth.y);
        Answers.dialog("Mark Teeth", shell -> {
            Spinner first = numbers(shell).get(0);
            Spinner last = numbers(shell).get(1);
            assertEquals(first.getSelection(), last.getSelection());
            first.setSelection(20);
            assertEquals(20, last.getSelection());
            last.setSelection(24);
            first.setSelection(22);
            assertEquals(24, last.getSelection(), "which was given");
        }, SWT.CR, () -> Desk.command(MARK));
        assertEquals("Mark teeth 22 to 24 as worn", session.history().getUndoCommand().getLabel());
    }

    private static List<Spinner> numbers(Shell shell) {
        return Desk.controls(shell, (Control control) -> control instanceof Spinner).stream().map(Spinner.class::cast).toList();
    }

    private static void press(Point at) {
        Desk.mouse(SWT.MouseMove, at.x, at.y, 0, SWT.SHIFT);
        Desk.mouse(SWT.MouseDown, at.x, at.y, 1, SWT.SHIFT);
    }

    private static void drag(Point to) {
        Desk.mouse(SWT.MouseMove, to.x, to.y, 0, SWT.BUTTON1 | SWT.SHIFT);
    }
}
