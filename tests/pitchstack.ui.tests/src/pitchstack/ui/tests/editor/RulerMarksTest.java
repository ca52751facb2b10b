// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.draw2d.IFigure;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.MoveTarget;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.Target;
import pitchstack.ui.editor.places.Bands;
import pitchstack.ui.editor.places.Mapping;

/** Position 0, targets and stops moved along the ruler. Fitted, 300 mm is at a small tick; rack teeth are 5 mm, fine ones 4.9 mm. */
class RulerMarksTest {
    private static final double MM = 1e12;
    private static final String UNDO = "org.eclipse.ui.edit.undo";

    @TempDir
    private Path folder;
    private Session session;
    private Sight sight;

    @BeforeEach
    void open() throws IOException {
        Positioner positioner = Stacks.pair();
        Axis axis = positioner.getAxes().get(0);
        axis.setLow("-100 mm");
        axis.setHigh("400 mm");
        Target target = PitchstackFactory.eINSTANCE.createTarget();
        target.setName("slot");
        target.setPosition("203 mm");
        axis.getTargets().add(target);
        session = Desk.draw(positioner, folder).getAdapter(Session.class);
        sight = new Sight(session);
    }

    @AfterEach
    void close() {
        Desk.closeAll();
    }

    private Target target() {
        return session.axis().getTargets().get(0);
    }

    private Point on(double mm) {
        return new Point(sight.px(mm * MM), Bands.RULER - 7);
    }

    private static boolean says(String words) {
        return says(Desk.canvas().getLightweightSystem().getRootFigure(), words);
    }

    private static boolean says(IFigure within, String words) {
        return within instanceof org.eclipse.draw2d.Label label && label.getText().contains(words)
                || within.getChildren().stream().anyMatch(child -> says((IFigure) child, words));
    }

    private static void drag(Point from, Point to) {
        Desk.press(from.x, from.y);
        Desk.dragTo(from.x + (to.x > from.x ? 8 : -8), from.y);
        Desk.dragTo(to.x, to.y);
    }

    @Test
    void dragsATargetToATickOfTheRulerAsOneChange() {
        EObject before = EcoreUtil.copy(session.positioner());
        Point to = on(300);
        drag(on(203), to);
        assertTrue(says("target “slot” at 300.000 mm"), "the value while it is dragged");
        assertEquals("203 mm", target().getPosition(), "the document changes at the end only");
        Desk.release(to.x, to.y);
        assertEquals("300.000 mm", target().getPosition());
        assertEquals(target(), Desk.selected());
        assertFalse(says("slot"), "the words are gone");
        Desk.command(UNDO);
        assertTrue(EcoreUtil.equals(before, session.positioner()));
        assertFalse(session.history().canUndo());
        Desk.command("org.eclipse.ui.edit.redo");
        assertEquals("300.000 mm", target().getPosition());
    }

    @Test
    void escapePutsADraggedMarkBack() {
        drag(on(203), on(290));
        Desk.key(SWT.ESC, SWT.BUTTON1);
        Desk.release(on(290).x, on(290).y);
        assertEquals("203 mm", target().getPosition());
        assertFalse(session.history().canUndo());
        assertFalse(says("slot"));
        Desk.click(on(203).x, on(203).y);
        assertEquals(target(), Desk.selected(), "it is drawn where it is");
    }

    /** Large, every position in reach has a dot, 0.1 mm apart near the datum, and the mark goes to the nearest. */
    @Test
    void dragsATargetToAPositionInReach() {
        target().setPosition("203 mm");
        Desk.key('m', 0, 'm');
        Desk.key('m', 0, 'm');
        Desk.key('m', 0, 'm');
        assertEquals(target(), Desk.selected(), "low stop, position 0, target, high stop");
        // However wide the window is: what is under the pointer stays there, far enough from the sides not to scroll on.
        int about = on(203).x;
        assertTrue(about > Mapping.GUTTER + 100 && about < Desk.canvas().getSize().x - 100, "at " + about);
        for (int i = 0; i < 40; i++) {
            Desk.wheel(about, 100, 1, SWT.MOD1);
        }
        Desk.until("every position is marked", () -> {
            Desk.mouse(SWT.MouseMove, about + 60, 8, 0, 0);
            return String.valueOf(Desk.canvas().getToolTipText()).startsWith("Dots mark every position in sight");
        });
        Point at = diamond();
        // 4.9 mm are 240 pixels at most.
        int off = (int) Math.round(0.19 * 240 / 4.9);
        Desk.press(at.x, at.y);
        Desk.dragTo(at.x + 20, at.y);
        Desk.dragTo(at.x + off, at.y);
        assertTrue(says("203.200 mm, in reach"), () -> "dragged from " + at + " of " + Desk.canvas().getSize());
        Desk.release(at.x + off, at.y);
        assertEquals("203.200 mm", target().getPosition());
    }

    /** The middle of the target's figure in the canvas. */
    private static Point diamond() {
        IFigure figure = find(Desk.canvas().getLightweightSystem().getRootFigure(), "TargetFigure");
        var middle = figure.getBounds().getCenter();
        figure.translateToAbsolute(middle);
        return new Point(middle.x, middle.y);
    }

    private static IFigure find(IFigure within, String kind) {
        if (within.getClass().getSimpleName().equals(kind)) {
            return within;
        }
        for (Object child : within.getChildren()) {
            IFigure found = find((IFigure) child, kind);
            if (found != null) {
                return found;
            }
        }
        return null;
    }

    @Test
    void movesAndDeletesMarksWithKeys() {
        Desk.key('m', 0, 'm');
        Desk.key(SWT.ARROW_RIGHT, 0);
        long tick = Math.round(sight.tick() / MM);
        assertEquals(tick - 100 + ".000 mm", session.axis().getLow());
        assertEquals(0, session.axis().getStages().get(0).getIndex(), "no stage moves with it");
        Desk.key('m', 0, 'm');
        assertEquals(target(), Desk.selected());
        Desk.key(SWT.ARROW_RIGHT, 0);
        long next = (203 / tick + 1) * tick;
        assertEquals(next + ".000 mm", target().getPosition(), "from between two ticks to the next");
        Desk.key(SWT.ARROW_LEFT, SWT.SHIFT);
        assertEquals(next - 10 * tick + ".000 mm", target().getPosition());
        session.run(new MoveTarget(target(), session.analysis().spec().scale(), Math.round(110 * MM)));
        Desk.key(SWT.ARROW_RIGHT, SWT.MOD3);
        assertEquals("110.100 mm", target().getPosition(), "the next in reach: 23 · 5 − 4.9 mm");
        Desk.command("org.eclipse.ui.edit.delete");
        assertEquals(List.of(), session.axis().getTargets());
        Desk.key('m', 0, 'm');
        Desk.key('m', 0, 'm');
        Desk.command("org.eclipse.ui.edit.delete");
        assertNull(session.axis().getLow());
        assertEquals("400 mm", session.axis().getHigh());
        Desk.command(UNDO);
        assertEquals(tick - 100 + ".000 mm", session.axis().getLow());
        Desk.command(UNDO);
        assertEquals("110.100 mm", target().getPosition());
    }

    @Test
    void dragsAStopButNotPastTheOther() {
        drag(on(400), on(200));
        assertTrue(says("high stop at 200.000 mm"));
        Desk.dragTo(on(-200).x, on(-200).y);
        assertTrue(says("high stop at −100.000 mm"));
        Desk.dragTo(on(300).x, on(300).y);
        Desk.release(on(300).x, on(300).y);
        assertEquals("300.000 mm", session.axis().getHigh());
        assertEquals("-100 mm", session.axis().getLow());
    }

    /** At +41 the carriage stands at 205 mm, at +80 on the high stop; the target stands at 203 mm. */
    @Test
    void showsWhatADraggedStageIsInLineWith() {
        Point body = sight.body(0);
        Desk.press(body.x, body.y);
        Desk.dragTo(body.x + 10, body.y);
        Desk.dragTo(body.x + sight.teeth(0, 80), body.y);
        assertTrue(says("the carriage in line with the high stop"));
        Desk.dragTo(body.x + sight.teeth(0, 41), body.y);
        assertTrue(says("the carriage 2.000 mm right of target “slot”"));
        // Drawn 30 rider teeth wide about the carriage, the rack's rider begins over base tooth 41, 18 before its end.
        assertFalse(says("high stop"));
        Desk.dragTo(body.x + sight.teeth(0, 70), body.y);
        assertTrue(says("the end of the rider row of “Rack” in line with the end of the base row of “Rack”"));
        Desk.release(body.x + sight.teeth(0, 70), body.y);
        assertEquals(70, session.axis().getStages().get(0).getIndex());
        assertFalse(says("in line"));
    }

    @Test
    void showsWhatADraggedRowEndIsInLineWith() {
        Point strip = sight.baseTooth(0, 90);
        Desk.click(strip.x, strip.y);
        Point end = sight.baseEnd(0, false);
        int to = sight.px(400 * MM) - end.x;
        Desk.press(end.x, end.y);
        Desk.dragTo(end.x - 10, end.y);
        Desk.dragTo(end.x + to, end.y);
        assertTrue(says("the end of the base row of “Rack” in line with the high stop"));
        Desk.key(SWT.ESC, SWT.BUTTON1);
        Desk.release(end.x + to, end.y);
        assertFalse(says("in line"));
        assertEquals(100, session.axis().getStages().get(0).getBaseRow().getTeeth());
    }

    @Test
    void showsWhatADraggedMarkIsInLineWith() {
        drag(on(203), on(400));
        assertTrue(says("target “slot” in line with the high stop"));
        Desk.dragTo(on(0).x, on(0).y);
        assertTrue(says("target “slot” in line with the datum"));
        Desk.release(on(0).x, on(0).y);
        assertEquals("0.000 mm", target().getPosition());
    }

    /** What is 100 mm becomes 0: the stops at −100 and 400 mm stay where they are, the target keeps its number. */
    @Test
    void dragsPositionZeroAsOneChange() {
        EObject before = EcoreUtil.copy(session.positioner());
        int stop = on(400).x;
        Point to = on(100);
        drag(on(0), to);
        assertTrue(says("100.000 mm becomes 0; the target keeps its number"), "the value while it is dragged");
        assertEquals("0", session.axis().getDatum(), "the document changes at the end only");
        Desk.release(to.x, to.y);
        assertEquals(List.of("-100.000 mm", "-200.000 mm", "300.000 mm", "203 mm"), List.of(session.axis().getDatum(),
                session.axis().getLow(), session.axis().getHigh(), target().getPosition()));
        assertEquals(stop, on(300).x, "the device is drawn where it was");
        assertFalse(says("becomes 0"), "the words are gone");
        Desk.command(UNDO);
        assertTrue(EcoreUtil.equals(before, session.positioner()));
        assertFalse(session.history().canUndo());
        drag(on(0), on(400));
        assertTrue(says("position 0 in line with the high stop"));
        Desk.key(SWT.ESC, SWT.BUTTON1);
        Desk.release(stop, to.y);
        assertTrue(EcoreUtil.equals(before, session.positioner()));
    }

    /** After the low stop position 0 is the next mark; a tick to the right it counts from there. */
    @Test
    void movesPositionZeroWithKeys() {
        long tick = Math.round(sight.tick() / MM);
        Desk.key('m', 0, 'm');
        Desk.key('m', 0, 'm');
        assertEquals(session.axis(), Desk.selected(), "its facts are those of the axis");
        Desk.key(SWT.ARROW_RIGHT, 0);
        assertEquals("-" + tick + ".000 mm", session.axis().getDatum());
        Desk.key(SWT.ARROW_RIGHT, 0);
        assertEquals("-" + 2 * tick + ".000 mm", session.axis().getDatum(), "still selected");
        assertEquals(400 - 2 * tick + ".000 mm", session.axis().getHigh());
        assertFalse(Desk.menuItem("Edit", "Delete").isEnabled(), "it cannot be deleted");
        Desk.command(UNDO);
        Desk.command(UNDO);
        assertEquals("0", session.axis().getDatum());
    }
}
