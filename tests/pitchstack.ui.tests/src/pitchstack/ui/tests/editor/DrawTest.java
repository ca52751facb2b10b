// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.ui.IEditorPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.Session;
import pitchstack.model.Positioner;
import pitchstack.model.Stage;
import pitchstack.ui.editor.places.Bands;

/** Drawing a stack: pieces placed, stages arranged, rows lengthened, pitches typed where they stand. */
class DrawTest {
    private static final double MM = 1e12;
    private static final String PLACE = "pitchstack.ui.editor.place";

    private static final Map<String, String> TIPS = Map.of("Rack", "Place a long bought rack", "Pair", "Place two printed rows",
            "Carriage", "Place a short coarse stage", "Stop", "Place a stop", "Datum", "Place the datum", "Worn",
            "Place worn teeth", "Target", "Place a target");

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

    private List<String> names() {
        return session.axis().getStages().stream().map(Stage::getName).toList();
    }

    private static ToolItem piece(String text) {
        return Desk.controls(Desk.shell(), control -> control instanceof ToolBar && control.isVisible()).stream()
                .flatMap(bar -> List.of(((ToolBar) bar).getItems()).stream()).filter(item -> item.getToolTipText() != null && item.getToolTipText().startsWith(TIPS.get(text)))
                .findFirst().orElseThrow();
    }

    private static void take(String text) {
        piece(text).setSelection(true);
        piece(text).notifyListeners(SWT.Selection, new Event());
        Desk.settle();
    }

    private static void keyboard(String piece) {
        Desk.command(PLACE, Map.of("pitchstack.ui.editor.place.piece", piece));
    }

    private static List<String> tips(IFigure within) {
        List<String> tips = new ArrayList<>();
        if (within instanceof org.eclipse.draw2d.Label label) {
            tips.add(label.getText());
        }
        within.getChildren().forEach(child -> tips.addAll(tips((IFigure) child)));
        return tips;
    }

    private static List<String> tips() {
        return tips(Desk.canvas().getLightweightSystem().getRootFigure());
    }

    /** From nothing to two stages with stops and a target, all the way back, and all the way forward again. */
    @Test
    void buildsAStackFromAnEmptyFileAndTakesAllOfItBack() throws IOException {
        open(Stacks.empty());
        List<EObject> states = new ArrayList<>(List.of(EcoreUtil.copy(session.positioner())));
        take("Rack");
        Desk.click(400, 200);
        assertEquals(List.of("Rack"), names());
        assertEquals(stage(0), Desk.selected());
        assertFalse(piece("Rack").getSelection(), "one at a time");
        states.add(EcoreUtil.copy(session.positioner()));
        keyboard("pair");
        assertEquals(List.of("Rack", "Fine stage"), names());
        states.add(EcoreUtil.copy(session.positioner()));
        take("Carriage");
        Desk.click(sight.body(0).x, sight.gapY(1));
        assertEquals(List.of("Rack", "Carriage", "Fine stage"), names());
        states.add(EcoreUtil.copy(session.positioner()));
        keyboard("target");
        assertEquals("Target 1", session.axis().getTargets().get(0).getName());
        states.add(EcoreUtil.copy(session.positioner()));
        for (int i = states.size() - 2; i >= 0; i--) {
            Desk.command("org.eclipse.ui.edit.undo");
            assertTrue(EcoreUtil.equals(states.get(i), session.positioner()), "undo to " + i);
        }
        for (int i = 1; i < states.size(); i++) {
            Desk.command("org.eclipse.ui.edit.redo");
            assertTrue(EcoreUtil.equals(states.get(i), session.positioner()), "redo to " + i);
        }
    }

    /** Everything that can be done to a drawing, one after the other, with the document compared at each state both ways. */
    @Test
    void takesEveryKindOfGestureBackAndDoesItAgain() throws IOException {
        open(Stacks.empty());
        List<EObject> states = new ArrayList<>(List.of(EcoreUtil.copy(session.positioner())));
        List<Runnable> gestures = List.of(() -> {
            take("Rack");
            Desk.click(400, 200);
        }, () -> keyboard("pair"), () -> drag(sight.body(0), sight.teeth(0, 12)), () -> {
            Desk.click(sight.baseTooth(0, 60).x, sight.baseTooth(0, 60).y);
            drag(sight.baseEnd(0, false), sight.teeth(0, -7));
        }, () -> {
            select(stage(1).getRiderRow());
            drag(sight.riderEnd(1), sight.teeth(1, 4));
        }, () -> {
            select(stage(1));
            Desk.command("pitchstack.ui.editor.editPitch");
            type("module 1.5");
        }, () -> {
            Desk.command("pitchstack.ui.editor.editName");
            type("Adapter");
        }, () -> Desk.key(SWT.ARROW_LEFT, SWT.SHIFT), () -> {
            take("Worn");
            Desk.click(sight.baseTooth(0, 40).x, sight.baseTooth(0, 40).y);
        }, () -> Desk.command("pitchstack.ui.editor.stageUp"), () -> keyboard("target"),
                () -> Desk.key(SWT.ARROW_RIGHT, 0), () -> Desk.command("pitchstack.ui.editor.duplicate"),
                () -> keyboard("stop"), () -> {
                    select(stage(0).getBaseRow());
                    Desk.command("pitchstack.ui.editor.longer");
                }, () -> {
                    Desk.command("org.eclipse.ui.edit.copy");
                    Desk.command("org.eclipse.ui.edit.paste");
                }, () -> Desk.command("org.eclipse.ui.edit.cut"), () -> {
                    select(session.axis().getTargets().get(0));
                    Desk.command("org.eclipse.ui.edit.delete");
                });
        for (int i = 0; i < gestures.size(); i++) {
            gestures.get(i).run();
            states.add(EcoreUtil.copy(session.positioner()));
            assertFalse(EcoreUtil.equals(states.get(i), states.get(i + 1)), "gesture " + i + " changes something");
        }
        for (int i = states.size() - 2; i >= 0; i--) {
            assertTrue(session.history().canUndo(), "one change a gesture");
            Desk.command("org.eclipse.ui.edit.undo");
            assertTrue(EcoreUtil.equals(states.get(i), session.positioner()), "undo to " + i);
        }
        assertFalse(session.history().canUndo());
        for (int i = 1; i < states.size(); i++) {
            Desk.command("org.eclipse.ui.edit.redo");
            assertTrue(EcoreUtil.equals(states.get(i), session.positioner()), "redo to " + i);
        }
        assertFalse(session.history().canRedo());
    }

    private void select(EObject element) {
        editor.getEditorSite().getSelectionProvider().setSelection(new StructuredSelection(element));
        Desk.settle();
    }

    private static void drag(Point from, int by) {
        Desk.press(from.x, from.y);
        Desk.dragTo(from.x + 8 * Integer.signum(by), from.y);
        Desk.dragTo(from.x + by, from.y);
        Desk.release(from.x + by, from.y);
    }

    @Test
    void placesMarksAtTheTicksOfTheRuler() throws IOException {
        open(Stacks.pair());
        int y = sight.body(1).y;
        int right = sight.px(200 * MM);
        take("Stop");
        Desk.mouse(SWT.MouseMove, right, y, 0, 0);
        assertTrue(tips().contains("high stop at 200.000 mm"), tips().toString());
        Desk.click(right, y);
        assertEquals("200.000 mm", session.axis().getHigh());
        take("Stop");
        Desk.click(sight.px(-200 * MM), y);
        assertEquals("-200.000 mm", session.axis().getLow());
        take("Target");
        Desk.click(right, y);
        assertEquals("200.000 mm", session.axis().getTargets().get(0).getPosition());
        assertEquals(session.axis().getTargets().get(0), Desk.selected());
        take("Datum");
        Desk.click(right, y);
        assertEquals("-200.000 mm", session.axis().getDatum());
        assertEquals("0.000 mm", session.axis().getHigh(), "the stop stands where it stood");
        take("Worn");
        Point tooth = sight.baseTooth(0, 70);
        Desk.click(tooth.x, tooth.y);
        assertEquals(sight.baseToothAt(0, tooth.x), stage(0).getBaseRow().getWorn().get(0).getFirst());
    }

    @Test
    void marksTheTeethThatAreDrawnOver() throws IOException {
        open(Stacks.pair());
        take("Worn");
        Point from = sight.baseTooth(0, 60);
        Point to = sight.baseTooth(0, 72);
        Desk.press(from.x, from.y);
        Desk.dragTo(from.x + 8, from.y);
        Desk.dragTo(to.x, to.y - 2);
        String worn = "mark teeth " + sight.baseToothAt(0, from.x) + " to " + sight.baseToothAt(0, to.x) + " as worn";
        assertTrue(tips().contains(worn), worn + " in " + tips());
        Desk.release(to.x, to.y - 2);
        assertEquals(sight.baseToothAt(0, from.x), stage(0).getBaseRow().getWorn().get(0).getFirst());
        assertEquals(sight.baseToothAt(0, to.x), stage(0).getBaseRow().getWorn().get(0).getLast());
        assertEquals(0, stage(0).getIndex(), "nothing is moved meanwhile");
    }

    @Test
    void escapePutsAPieceBack() throws IOException {
        open(Stacks.pair());
        take("Pair");
        Desk.mouse(SWT.MouseMove, sight.body(1).x, sight.gapY(2), 0, 0);
        assertTrue(tips().contains("Fine stage 2, 4.9 mm, on “Fine stage”"), tips().toString());
        Desk.key(SWT.ESC, 0);
        assertFalse(piece("Pair").getSelection());
        assertEquals(List.of(), tips());
        Desk.click(sight.body(1).x, sight.body(1).y);
        assertEquals(2, names().size());
        assertEquals(stage(1), Desk.selected());
    }

    @Test
    void arrangesStagesByADragUpOrDownAndByCommands() throws IOException {
        open(Stacks.pair());
        Point body = sight.body(1);
        Desk.press(body.x, body.y);
        Desk.dragTo(body.x, body.y + 10);
        Desk.dragTo(body.x + 2, sight.gapY(0));
        assertTrue(tips().contains("to the base"), tips().toString());
        assertEquals(List.of("Rack", "Fine stage"), names(), "the document changes at the end only");
        Desk.release(body.x + 2, sight.gapY(0));
        assertEquals(List.of("Fine stage", "Rack"), names());
        assertEquals(stage(0), Desk.selected());
        assertEquals(0, stage(0).getIndex());
        Desk.command("pitchstack.ui.editor.stageUp");
        assertEquals(List.of("Rack", "Fine stage"), names());
        Desk.command("pitchstack.ui.editor.stageUp");
        assertEquals(List.of("Rack", "Fine stage"), names(), "the top is the top");
        Desk.command("pitchstack.ui.editor.duplicate");
        assertEquals(List.of("Rack", "Fine stage", "Fine stage 2"), names());
        assertEquals(stage(2), Desk.selected());
    }

    @Test
    void escapeLeavesAStageThatIsDraggedUpWhereItIs() throws IOException {
        open(Stacks.pair());
        Point body = sight.body(0);
        Desk.press(body.x, body.y);
        Desk.dragTo(body.x, body.y - 10);
        Desk.dragTo(body.x, sight.gapY(2));
        Desk.key(SWT.ESC, 0);
        assertEquals(List.of(), tips());
        Desk.release(body.x, sight.gapY(2));
        assertEquals(List.of("Rack", "Fine stage"), names());
    }

    @Test
    void carriesStagesFromFileToFileOverTheClipboard() throws IOException {
        open(Stacks.barred());
        IEditorPart first = editor;
        Point body = sight.body(0);
        Desk.click(body.x, body.y);
        Desk.command("org.eclipse.ui.edit.copy");
        editor = Desk.open(Stacks.save(Stacks.empty(), folder.resolve("other.pitchstack")));
        session = editor.getAdapter(Session.class);
        Desk.canvas().setFocus();
        Desk.command("org.eclipse.ui.edit.paste");
        assertEquals(List.of("Rack"), names());
        assertEquals(60, stage(0).getBaseRow().getWorn().get(0).getFirst());
        Desk.command("org.eclipse.ui.edit.paste");
        assertEquals(List.of("Rack", "Rack 2"), names());
        Desk.command("org.eclipse.ui.edit.cut");
        assertEquals(List.of("Rack"), names());
        Desk.command("org.eclipse.ui.edit.undo");
        assertEquals(List.of("Rack", "Rack 2"), names());
        assertEquals(2, first.getAdapter(Session.class).axis().getStages().size(), "what was copied stays");
    }

    @Test
    void lengthensARowByItsEndWithTheNumbersFollowing() throws IOException {
        open(Stacks.pair());
        Point strip = sight.baseTooth(0, 90);
        Desk.click(strip.x, strip.y);
        assertEquals(stage(0).getBaseRow(), Desk.selected());
        Point end = sight.baseEnd(0, false);
        int three = sight.teeth(0, 3);
        Desk.press(end.x, end.y);
        Desk.dragTo(end.x - 10, end.y);
        Desk.dragTo(end.x + three, end.y);
        // 30 teeth on 103, 12 engaged: −18 to 91.
        assertTrue(tips().contains("103 teeth, index −18 to +91, 30 engaged"), tips().toString());
        assertEquals(100, stage(0).getBaseRow().getTeeth(), "the document changes at the end only");
        Desk.release(end.x + three, end.y);
        assertEquals(103, stage(0).getBaseRow().getTeeth());
        assertEquals(0, stage(0).getStart());
        Desk.key('-', 0, '-');
        assertEquals(102, stage(0).getBaseRow().getTeeth());
        Desk.key('+', SWT.MOD3, '+');
        assertEquals(103, stage(0).getBaseRow().getTeeth());
        assertEquals(1, stage(0).getStart(), "a tooth before tooth 0 is counted");
    }

    /** Of the row figures the first two are those of the lowest stage: its base row and its rider row. */
    private static Rectangle row(int number) {
        return rows(Desk.canvas().getLightweightSystem().getRootFigure()).get(number).getBounds().getCopy();
    }

    private static List<IFigure> rows(IFigure within) {
        List<IFigure> rows = new ArrayList<>();
        if (within.getClass().getSimpleName().equals("RowFigure")) {
            rows.add(within);
        }
        within.getChildren().forEach(child -> rows.addAll(rows((IFigure) child)));
        return rows;
    }

    @Test
    void lengthensARiderRowByAnEndThatFollowsThePointerWhileAllElseOfItStays() throws IOException {
        open(Stacks.pair());
        editor.getEditorSite().getSelectionProvider().setSelection(new StructuredSelection(stage(0).getRiderRow()));
        Desk.settle();
        Point end = sight.riderEnd(0);
        Rectangle base = row(0);
        Rectangle rider = row(1);
        int four = sight.teeth(0, 4);
        Desk.press(end.x, end.y);
        Desk.dragTo(end.x - 10, end.y);
        Desk.dragTo(end.x + four, end.y);
        assertEquals(base, row(0), "the row below does not move");
        assertEquals(rider.x, row(1).x, 1, "nor does the other end");
        assertEquals(rider.right() + four, row(1).right(), 1);
        // 34 teeth over 100 with 12 engaged: −22 to 88.
        assertTrue(tips().contains("34 teeth, index −22 to +88, 34 engaged"), tips().toString());
        Desk.release(end.x + four, end.y);
        assertEquals(34, stage(0).getRiderRow().getTeeth());
        assertEquals(0, stage(0).getStart());
    }

    @Test
    void cutsARiderRowAtItsStartWhereTheDrawingIsLargeAndKeepsItWhereItIs() throws IOException {
        open(Stacks.pair());
        editor.getEditorSite().getSelectionProvider().setSelection(new StructuredSelection(stage(0).getRiderRow()));
        Point start = new Point(row(1).x, row(1).y + Bands.STRIP / 2);
        for (int notch = 0; notch < 4; notch++) {
            Desk.wheel(start.x, start.y, 1, SWT.MOD1);
        }
        int scrolled = Desk.canvas().getViewport().getViewLocation().x;
        Rectangle base = row(0).translate(-scrolled, 0);
        Rectangle rider = row(1).translate(-scrolled, 0);
        int three = (int) Math.round(3 * rider.width / 30.0);
        Desk.press(rider.x, start.y);
        Desk.dragTo(rider.x + 10, start.y);
        Desk.dragTo(rider.x + three, start.y);
        assertEquals(rider.x + three, row(1).x - scrolled, 1);
        assertEquals(rider.right(), row(1).right() - scrolled, 1);
        assertEquals(base.x, row(0).x - scrolled, 1);
        Desk.release(rider.x + three, start.y);
        assertEquals(27, stage(0).getRiderRow().getTeeth());
        assertEquals(3, stage(0).getStart(), "the teeth that are left keep their mates");
        scrolled = Desk.canvas().getViewport().getViewLocation().x;
        assertEquals(rider.right(), row(1).right() - scrolled, 2, "after the change, too");
    }

    @Test
    void cutsARowAtItsStart() throws IOException {
        open(Stacks.pair());
        Point strip = sight.baseTooth(0, 90);
        Desk.click(strip.x, strip.y);
        Point end = sight.baseEnd(0, true);
        int two = sight.teeth(0, 2);
        Desk.press(end.x, end.y);
        Desk.dragTo(end.x + 10, end.y);
        Desk.dragTo(end.x + two, end.y);
        Desk.release(end.x + two, end.y);
        assertEquals(98, stage(0).getBaseRow().getTeeth());
        assertEquals(-2, stage(0).getStart());
        Desk.command("org.eclipse.ui.edit.undo");
        assertEquals(100, stage(0).getBaseRow().getTeeth());
    }

    private static Text field() {
        return (Text) Desk.controls(Desk.canvas(), control -> control instanceof Text && control.isVisible()).get(0);
    }

    private static boolean fieldIsOpen() {
        return !Desk.controls(Desk.canvas(), control -> control instanceof Text && control.isVisible()).isEmpty();
    }

    private static void type(String text) {
        field().setText(text);
        field().notifyListeners(SWT.DefaultSelection, new Event());
        Desk.settle();
    }

    private static Combo choice() {
        return (Combo) Desk.controls(Desk.canvas(), control -> control instanceof Combo && control.isVisible()).get(0);
    }

    private static boolean fieldSays(String words) {
        return Desk.controls(Desk.canvas(), control -> control instanceof Label).stream()
                .anyMatch(label -> ((Label) label).getText().contains(words));
    }

    /** 24 DP is 3.324 852 mm and module 2 is 6.283 185 mm a tooth: π · 25.4 / 24 and 2 π. */
    @Test
    void choosesThePitchSystemBesideTheNumber() throws IOException {
        open(Stacks.pair());
        select(stage(0));
        Desk.command("pitchstack.ui.editor.editPitch");
        assertEquals("5", field().getText());
        assertEquals(List.of("mm", "in", "module", "DP", "mm CP", "in CP"), List.of(choice().getItems()));
        assertEquals("mm", choice().getText());
        field().setText("24");
        Event down = new Event();
        down.keyCode = SWT.ARROW_DOWN;
        for (int i = 0; i < 3; i++) {
            field().notifyListeners(SWT.KeyDown, down);
        }
        assertEquals("DP", choice().getText());
        assertTrue(fieldSays("24 DP: 3.3249 mm a tooth"));
        field().notifyListeners(SWT.DefaultSelection, new Event());
        Desk.settle();
        assertEquals("24 DP", stage(0).getPitch());
        Desk.command("pitchstack.ui.editor.editPitch");
        assertEquals("24", field().getText());
        field().setText("2");
        choice().select(2);
        choice().notifyListeners(SWT.Selection, new Event());
        assertTrue(fieldSays("module 2: 6.2832 mm a tooth"));
        Event enter = new Event();
        enter.keyCode = SWT.CR;
        choice().notifyListeners(SWT.KeyDown, enter);
        Desk.settle();
        assertEquals("module 2", stage(0).getPitch());
        Desk.command("org.eclipse.ui.edit.undo");
        assertEquals("24 DP", stage(0).getPitch());
        Desk.command("org.eclipse.ui.edit.undo");
        assertEquals("5 mm", stage(0).getPitch());
    }

    @Test
    void typesAPitchWhereItStandsInAnySystem() throws IOException {
        open(Stacks.pair());
        editor.getEditorSite().getSelectionProvider().setSelection(new StructuredSelection(stage(0)));
        for (String pitch : List.of("module 1", "24 DP", "1/4 in CP", "0.24 in", "5.2 mm")) {
            Desk.command("pitchstack.ui.editor.editPitch");
            type(pitch);
            assertEquals(pitch, stage(0).getPitch());
            assertFalse(fieldIsOpen());
        }
        Desk.command("pitchstack.ui.editor.editPitch");
        type("5 furlongs");
        assertTrue(fieldIsOpen(), "it stays until it can be taken");
        assertTrue(Desk.controls(Desk.canvas(), control -> control instanceof Label).stream()
                .anyMatch(label -> ((Label) label).getText().contains("furlongs")));
        Event escape = new Event();
        escape.detail = SWT.TRAVERSE_ESCAPE;
        field().notifyListeners(SWT.Traverse, escape);
        Desk.settle();
        assertFalse(fieldIsOpen());
        assertEquals("5.2 mm", stage(0).getPitch());
        Desk.command("org.eclipse.ui.edit.undo");
        assertEquals("0.24 in", stage(0).getPitch(), "the keys of the Edit menu are back");
    }
}
