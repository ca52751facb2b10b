// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.ScrollBar;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.Session;
import pitchstack.model.Positioner;
import pitchstack.ui.editor.places.Mapping;

/** Zooming, scrolling, and how much is painted; how long that takes is measured by {@link PaintTimes}. Widths are read from the scroll bar, as the system shows them. */
class ZoomTest {
    private static final int LONG = 20_000;

    @TempDir
    private Path folder;
    private Session session;
    private Sight sight;

    private void open(Positioner positioner) throws IOException {
        session = Desk.draw(positioner, folder).getAdapter(Session.class);
        sight = new Sight(session);
    }

    @AfterEach
    void close() {
        Desk.closeAll();
    }

    private static ScrollBar across() {
        return Desk.canvas().getHorizontalBar();
    }

    private static int windowWidth() {
        return Desk.canvas().getViewport().getClientArea().width;
    }

    /** The width of what is drawn, without labels and margins: it grows with the scale. */
    private static double drawn() {
        return Desk.canvas().getViewport().getHorizontalRangeModel().getMaximum() - Mapping.GUTTER - 2.0 * Mapping.MARGIN;
    }

    @Test
    void opensWithTheWholeTravelInTheWindow() throws IOException {
        open(Stacks.pair());
        assertFalse(across().isVisible());
        assertFalse(Desk.canvas().getVerticalBar().isVisible());
    }

    @Test
    void ctrlWheelZoomsAboutThePointer() throws IOException {
        open(Stacks.pair());
        Point body = sight.body(1);
        double fitted = drawn();
        for (int notch = 0; notch < 8; notch++) {
            Desk.wheel(body.x, body.y, 1, SWT.MOD1);
        }
        assertEquals(Math.pow(1.25, 8) * fitted, drawn(), 0.01 * drawn());
        assertTrue(across().isVisible());
        assertFalse(Desk.canvas().getVerticalBar().isVisible(), () -> "all heights fit: "
                + Desk.canvas().getViewport().getVerticalRangeModel() + " in " + Desk.canvas().getClientArea());
        Desk.click(body.x, body.y);
        assertEquals(session.axis().getStages().get(1), Desk.selected(), "the body is still under the pointer");
        Desk.command("pitchstack.ui.editor.fit");
        assertEquals(fitted, drawn(), 1);
    }

    @Test
    void plainWheelLeavesTheScale() throws IOException {
        open(Stacks.pair());
        double fitted = drawn();
        Desk.wheel(500, 200, 3, 0);
        assertEquals(fitted, drawn(), 0);
    }

    @Test
    void zoomCommandsEnlargeAndDiminishByAQuarter() throws IOException {
        open(Stacks.pair());
        double fitted = drawn();
        Desk.command("pitchstack.ui.editor.zoomIn");
        assertEquals(1.25 * fitted, drawn(), 2);
        Desk.command("pitchstack.ui.editor.zoomOut");
        assertEquals(fitted, drawn(), 2);
    }

    @Test
    void dragsToothByToothWhateverTheScale() throws IOException {
        open(Stacks.pair());
        Point body = sight.body(0);
        double teethPx = sight.teeth(0, 1000) / 1000.0;
        for (int notch = 0; notch < 12; notch++) {
            Desk.wheel(body.x, body.y, 1, SWT.MOD1);
        }
        int threeTeeth = (int) Math.round(3 * teethPx * Math.pow(1.25, 12));
        Desk.press(body.x, body.y);
        Desk.dragTo(body.x + threeTeeth / 2, body.y);
        Desk.dragTo(body.x + threeTeeth, body.y);
        Desk.release(body.x + threeTeeth, body.y);
        assertEquals(3, session.axis().getStages().get(0).getIndex());
    }

    @Test
    void drawsNoMoreOfALongRowThanOfAShortOne() throws IOException {
        long[] few = drawn(LONG / 10);
        long[] many = drawn(LONG);
        for (int i = 1; i < few.length; i++) {
            assertTrue(few[i] > 100, "something is drawn: " + few[i]);
            // Both sizes are the wanted one or up to a step of 1.25 above it, and a few numbers more or less are in sight.
            assertTrue(many[i] < 1.3 * few[i], many[i] + " for ten times the teeth, " + few[i] + " for few, at size " + i);
        }
        // Fitted, the long row is a band with ticks: never more than there are pixels for.
        assertTrue(many[0] < 2L * windowWidthAtFit, many[0] + " in " + windowWidthAtFit + " pixels");
    }

    private int windowWidthAtFit;

    /** What is drawn at the fitting scale, and at three sizes of a tooth of 2 mm. */
    private long[] drawn(int teeth) throws IOException {
        open(Stacks.rack(teeth));
        windowWidthAtFit = windowWidth();
        long[] counts = new long[4];
        counts[0] = CountingGraphics.of(Desk.canvas());
        Point body = sight.body(0);
        double[] sizes = {4, 12, 60};
        for (int i = 0; i < sizes.length; i++) {
            while (drawn() / session.analysis().spec().stages().get(0).rows().base().teeth() < sizes[i]) {
                Desk.wheel(body.x, body.y, 1, SWT.MOD1);
            }
            counts[i + 1] = CountingGraphics.of(Desk.canvas());
        }
        Desk.closeAll();
        return counts;
    }

    /** A tooth of at least 3 pixels has four corners, filled and outlined; 20 a pixel leaves room for hatching. */
    @Test
    void drawsOnlyWhatIsSeenOfSixStagesAtEveryScale() throws IOException {
        open(Stacks.six(LONG));
        for (double size = 0.03; size < 200; size *= 3) {
            while (drawn() / LONG < size) {
                Point body = sight.body(0);
                Desk.wheel(body.x, body.y, 1, SWT.MOD1);
            }
            long count = CountingGraphics.of(Desk.canvas());
            assertTrue(count > 50, "something is drawn: " + count);
            assertTrue(count < 20L * windowWidth() * 12, count + " at " + size + " px a tooth, 12 rows, " + windowWidth() + " px");
        }
    }

    @Test
    void scrollsAlongTwentyThousandTeethAndDrawsOnlyWhatIsSeen() throws IOException {
        open(Stacks.rack(LONG));
        Point body = sight.body(0);
        while (drawn() / LONG < 20) {
            Desk.wheel(body.x, body.y, 1, SWT.MOD1);
        }
        FigureCanvas canvas = Desk.canvas();
        Desk.key(SWT.HOME, 0);
        assertEquals(0, canvas.getViewport().getViewLocation().x);
        long least = Long.MAX_VALUE;
        long most = 0;
        int step = (int) (drawn() / 150);
        for (int i = 0; i < 100; i++) {
            canvas.scrollToX((i + 1) * step);
            assertEquals((i + 1) * step, canvas.getViewport().getViewLocation().x);
            long count = CountingGraphics.of(canvas);
            least = Math.min(least, count);
            most = Math.max(most, count);
        }
        assertTrue(most < 20L * windowWidth() * 4, most + " in " + windowWidth() + " pixels of 4 rows, at least " + least);
        Desk.key(SWT.END, 0);
        assertEquals(canvas.getViewport().getHorizontalRangeModel().getMaximum() - windowWidth(),
                canvas.getViewport().getViewLocation().x);
    }
}
