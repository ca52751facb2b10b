// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.MarkTeeth;
import pitchstack.edit.Session;
import pitchstack.edit.ToothMark;
import pitchstack.model.Stage;
import pitchstack.model.WearKind;

/** The same gestures with the mouse and the keyboard of the screen, so that key bindings are part of the test. */
class HandsTest {
    @TempDir
    private Path folder;
    private Session session;
    private Sight sight;

    @BeforeEach
    void open() throws IOException {
        session = Desk.draw(Stacks.pair(), folder).getAdapter(Session.class);
        sight = new Sight(session);
    }

    @AfterEach
    void close() {
        Desk.closeAll();
    }

    private Stage stage(int number) {
        return session.axis().getStages().get(number);
    }

    @Test
    void dragsWithTheMouseAndUndoesAndRedoesWithKeys() throws IOException {
        Point body = sight.body(0);
        Keyboard.drag(body, new Point(body.x + sight.teeth(0, 20), body.y + 3));
        assertEquals(20, stage(0).getIndex());
        Keyboard.press("ctrl+z");
        assertEquals(0, stage(0).getIndex());
        Keyboard.press("ctrl+shift+z");
        assertEquals(20, stage(0).getIndex());
        Keyboard.press("ctrl+z", "ctrl+y");
        assertEquals(20, stage(0).getIndex());
    }

    @Test
    void movesAndDeletesWithKeys() throws IOException {
        Keyboard.press("Up", "Right", "Right", "shift+Right", "Left");
        assertEquals(11, stage(0).getIndex());
        Keyboard.press("Up", "ctrl+Left");
        assertEquals(-10, stage(1).getIndex());
        Keyboard.press("Delete");
        assertEquals(1, session.axis().getStages().size());
        Keyboard.press("ctrl+z");
        assertEquals(2, session.axis().getStages().size());
    }

    @Test
    void drawsAStackWithKeys() throws IOException {
        Keyboard.press("Up", "ctrl+3");
        assertEquals(List.of("Rack", "Carriage", "Fine stage"), names());
        Keyboard.press("alt+Up");
        assertEquals(List.of("Rack", "Fine stage", "Carriage"), names());
        Keyboard.press("alt+Down", "alt+Down");
        assertEquals(List.of("Carriage", "Rack", "Fine stage"), names());
        Keyboard.press("ctrl+d", "ctrl+x", "ctrl+z");
        assertEquals(List.of("Carriage", "Carriage 2", "Rack", "Fine stage"), names());
        Keyboard.press("Down", "Down", "ctrl+c", "Up", "Up", "ctrl+v");
        assertEquals(5, names().size(), names().toString());
        Keyboard.press("ctrl+7");
        assertEquals(1, session.axis().getTargets().size());
    }

    @Test
    void typesAPitchWithKeysThatBelongToTheFieldMeanwhile() throws IOException {
        Keyboard.press("Up", "F2", "Delete", "m", "o", "d", "u", "l", "e", "space", "2", "BackSpace", "1", "Return");
        assertEquals("module 1", stage(0).getPitch());
        assertEquals(2, names().size(), "Delete was for the text");
        Keyboard.press("F2", "ctrl+c", "End", "ctrl+v", "Escape", "ctrl+z");
        assertEquals("5 mm", stage(0).getPitch(), "Escape leaves the text, Undo is for the drawing again");
        assertEquals(2, names().size(), "nothing was pasted as a stage");
    }

    @Test
    void choosesAPitchSystemWithKeys() throws IOException {
        Keyboard.press("Up", "F2", "2", "4", "Down", "Down", "Down", "Return");
        assertEquals("24 DP", stage(0).getPitch());
        Keyboard.press("F2", "Tab", "Up", "Return");
        assertEquals("module 24", stage(0).getPitch(), "mm, in, module, DP");
        Keyboard.press("F2", "Tab", "shift+Tab", "3", "Escape", "ctrl+z", "ctrl+z");
        assertEquals("5 mm", stage(0).getPitch());
        Keyboard.press("shift+F2", "N", "Return");
        assertEquals("N", stage(0).getName());
    }

    @Test
    void selectsAndMovesRowsAndMarksWithKeys() throws IOException {
        Keyboard.press("Up", "r", "plus");
        assertEquals(31, stage(0).getRiderRow().getTeeth());
        Keyboard.press("r", "minus");
        assertEquals(99, stage(0).getBaseRow().getTeeth());
        Keyboard.press("ctrl+7", "Right");
        assertEquals(Math.round(sight.tick() / 1e12) + ".000 mm", session.axis().getTargets().get(0).getPosition());
        Keyboard.press("ctrl+d", "Delete", "m", "Right");
        assertEquals("-" + Math.round(sight.tick() / 1e12) + ".000 mm", session.axis().getDatum(), "position 0 is moved");
        Keyboard.press("m", "Delete");
        assertEquals(List.of(), session.axis().getTargets());
    }

    @Test
    void copiesCutsAndPastesATargetAndMarkedTeethWithKeys() throws IOException {
        Keyboard.press("ctrl+7", "ctrl+c", "ctrl+v");
        assertEquals(2, session.axis().getTargets().size());
        Keyboard.press("ctrl+x");
        assertEquals(1, session.axis().getTargets().size());
        Keyboard.press("ctrl+v");
        assertEquals(2, session.axis().getTargets().size());
        session.run(new MarkTeeth(new ToothMark(stage(0).getBaseRow(), 3, 7, WearKind.BARRED, "chipped")));
        Keyboard.press("Up", "r", "r", "r", "ctrl+c", "Up", "r", "ctrl+v");
        ToothMark pasted = ToothMark.all(stage(1).getRiderRow()).get(0);
        assertEquals(new ToothMark(stage(1).getRiderRow(), 3, 7, WearKind.BARRED, "chipped"), pasted);
        Keyboard.press("ctrl+z");
        assertEquals(List.of(), ToothMark.all(stage(1).getRiderRow()));
    }

    private List<String> names() {
        return session.axis().getStages().stream().map(Stage::getName).toList();
    }

    @Test
    void zoomsAndFitsWithKeys() throws IOException {
        int fitted = Desk.canvas().getViewport().getHorizontalRangeModel().getMaximum();
        Keyboard.press("ctrl+equal", "ctrl+plus");
        int zoomed = Desk.canvas().getViewport().getHorizontalRangeModel().getMaximum();
        assertTrue(zoomed > 1.2 * fitted, zoomed + " after " + fitted);
        Keyboard.press("ctrl+minus");
        assertTrue(Desk.canvas().getViewport().getHorizontalRangeModel().getMaximum() < zoomed);
        Keyboard.press("ctrl+0");
        assertEquals(fitted, Desk.canvas().getViewport().getHorizontalRangeModel().getMaximum());
    }

    @Test
    void tabLeavesTheDrawingAndComesBack() throws IOException {
        assertSame(Desk.canvas(), Display.getCurrent().getFocusControl());
        Keyboard.press("Tab");
        assertNotSame(Desk.canvas(), Display.getCurrent().getFocusControl());
        Keyboard.press("shift+Tab");
        assertSame(Desk.canvas(), Display.getCurrent().getFocusControl());
    }

    @Test
    void startsANewPositionerWithKeys() throws IOException {
        Keyboard.press("ctrl+n");
        assertEquals(2, Desk.page().getEditorReferences().length);
        Keyboard.press("ctrl+w");
        assertEquals(1, Desk.page().getEditorReferences().length);
    }
}
