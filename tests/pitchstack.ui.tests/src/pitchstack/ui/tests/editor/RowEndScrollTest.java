// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.Label;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.Session;
import pitchstack.model.Row;
import pitchstack.ui.editor.places.Mapping;

/** The end of a row held at a side of the window: the drawing scrolls on, and the row grows with it. */
class RowEndScrollTest {
    /** So near the side, in pixels. */
    private static final int HELD = 3;
    /** Scrolled by more than the free margin of a fitted drawing, the drawing itself has grown. */
    private static final int FAR = 10 * Mapping.MARGIN;

    @TempDir
    private Path folder;
    private Session session;
    private Sight sight;
    private double toothPx;

    @BeforeEach
    void selectTheBaseRow() throws IOException {
        session = Desk.draw(Stacks.pair(), folder).getAdapter(Session.class);
        sight = new Sight(session);
        toothPx = sight.teeth(0, 100) / 100.0;
        Point strip = sight.baseTooth(0, 90);
        Desk.click(strip.x, strip.y);
    }

    @AfterEach
    void close() {
        Desk.closeAll();
    }

    private Row row() {
        return session.axis().getStages().get(0).getBaseRow();
    }

    private static int scrolled() {
        return Desk.canvas().getViewport().getViewLocation().x;
    }

    private static int width() {
        return Desk.canvas().getViewport().getClientArea().width;
    }

    /** The teeth of the row as the words beside the pointer say. */
    private static int said() {
        return said(Desk.canvas().getLightweightSystem().getRootFigure()).orElse(0);
    }

    private static OptionalInt said(IFigure within) {
        if (within instanceof Label label && label.getText().contains(" teeth, index ")) {
            return OptionalInt.of(Integer.parseInt(label.getText().substring(0, label.getText().indexOf(' '))));
        }
        for (Object child : within.getChildren()) {
            OptionalInt found = said((IFigure) child);
            if (found.isPresent()) {
                return found;
            }
        }
        return OptionalInt.empty();
    }

    private static void hold(Point end, int at) {
        Desk.press(end.x, end.y);
        Desk.dragTo(end.x + (at > end.x ? 8 : -8), end.y);
        Desk.dragTo(at, end.y);
    }

    /** The end was drawn at one pixel, and stands at another of a drawing scrolled by so many: the rest is arithmetic. */
    @Test
    void scrollsToTheRightAndEscapePutsAllBack() {
        Point end = sight.baseEnd(0, false);
        int at = width() - HELD;
        hold(end, at);
        Desk.until("the drawing scrolls", () -> scrolled() > FAR);
        assertEquals(100 + (at + scrolled() - end.x) / toothPx, said(), 1 + 20 / toothPx, "the end follows the pointer");
        assertEquals(100, row().getTeeth(), "the document changes at the end only");
        Desk.key(SWT.ESC, SWT.BUTTON1);
        Desk.release(at, end.y);
        assertEquals(0, scrolled());
        assertEquals(100, row().getTeeth());
    }

    @Test
    void growsToTheLeftAsOneChange() {
        Point start = sight.baseEnd(0, true);
        int at = Mapping.GUTTER + HELD;
        int many = 100 + (int) Math.ceil(FAR / toothPx);
        hold(start, at);
        Desk.until("the row has grown", () -> said() > many);
        Desk.release(at, start.y);
        assertTrue(row().getTeeth() > many);
        assertEquals(row().getTeeth() - 100, session.axis().getStages().get(0).getStart(), "the other end stays");
        Desk.command("org.eclipse.ui.edit.undo");
        assertEquals(100, row().getTeeth(), "one change");
    }

    /** Beside the end of a fitted row some pixels are free, in which it is lengthened without scrolling. */
    @Test
    void doesNotScrollForAToothOrTwo() {
        Point end = sight.baseEnd(0, false);
        int by = (int) Math.round(2 * toothPx);
        assertTrue(end.x + by < width() - Mapping.MARGIN / 3, "two teeth fit");
        hold(end, end.x + by);
        IntStream.range(0, 10).forEach(wait -> Desk.settle());
        assertEquals(0, scrolled());
        Desk.release(end.x + by, end.y);
        assertEquals(102, row().getTeeth());
    }
}
