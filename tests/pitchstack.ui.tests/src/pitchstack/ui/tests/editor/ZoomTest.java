// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.ScrollBar;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.Session;
import pitchstack.model.Positioner;
import pitchstack.ui.editor.places.Mapping;

/** Zooming, scrolling, and what painting costs. Widths are read from the scroll bar, as the system shows them. */
class ZoomTest {
    private static final int LONG = 20_000;
    /** One frame is 16 ms; a software-rendered test screen, with other work on the machine, gets three. */
    private static final double MOST_MS = 50;
    private static final int ROUNDS = 30;

    @TempDir
    private Path folder;
    private Session session;
    private Sight sight;

    private void open(Positioner positioner) throws IOException {
        session = Desk.open(Stacks.save(positioner, folder.resolve("stack.pitchstack"))).getAdapter(Session.class);
        sight = new Sight(session);
        Desk.canvas().setFocus();
        Desk.settle();
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
    void paintsLongRowsAsFastAsShortOnes() throws IOException {
        double[] shortMs = paintTimes(200);
        double[] longMs = paintTimes(LONG);
        System.out.printf("paint times in ms at fit, teeth of 4 px, 12 px and 60 px: %s for 200 teeth, %s for %d teeth%n",
                Arrays.toString(shortMs), Arrays.toString(longMs), LONG);
        for (int i = 0; i < longMs.length; i++) {
            assertTrue(longMs[i] < MOST_MS, "a paint of the long row takes " + longMs[i] + " ms");
            // As many teeth are seen of both, but at the fitting scale, where the long row is a band.
            assertTrue(longMs[i] < 3 * shortMs[i] + 5, longMs[i] + " ms against " + shortMs[i] + " ms");
        }
    }

    /** Medians at the fitting scale and at three sizes of a tooth of 2 mm. */
    private double[] paintTimes(int teeth) throws IOException {
        open(Stacks.rack(teeth));
        double[] times = new double[4];
        times[0] = paintTime();
        Point body = sight.body(0);
        double[] sizes = {4, 12, 60};
        for (int i = 0; i < sizes.length; i++) {
            while (drawn() / session.analysis().spec().stages().get(0).rows().base().teeth() < sizes[i]) {
                Desk.wheel(body.x, body.y, 1, SWT.MOD1);
            }
            times[i + 1] = paintTime();
        }
        Desk.closeAll();
        return times;
    }

    /** The median time of painting all that is seen, on a picture of the canvas's size. */
    private static double paintTime() {
        FigureCanvas canvas = Desk.canvas();
        Image picture = picture(canvas);
        double[] ms = new double[ROUNDS];
        for (int round = 0; round < ROUNDS; round++) {
            ms[round] = paint(canvas, picture);
        }
        assertTrue(colours(picture.getImageData()) > 10, "nothing was painted");
        picture.dispose();
        Arrays.sort(ms);
        return Math.round(ms[ROUNDS / 2] * 100) / 100.0;
    }

    /** How many colours are on two lines through the drawing. */
    private static long colours(ImageData picture) {
        int[] pixels = new int[picture.width];
        picture.getPixels(0, picture.height / 2, picture.width, pixels, 0);
        int[] down = IntStream.range(0, picture.height).map(y -> picture.getPixel(picture.width - 40, y)).toArray();
        return IntStream.concat(Arrays.stream(pixels), Arrays.stream(down)).distinct().count();
    }

    /** A picture in our own memory: one of the window system's would be painted by the system, later. */
    private static Image picture(FigureCanvas canvas) {
        PaletteData colours = new PaletteData(0xFF0000, 0xFF00, 0xFF);
        return new Image(canvas.getDisplay(), new ImageData(canvas.getSize().x, canvas.getSize().y, 24, colours));
    }

    private static double paint(FigureCanvas canvas, Image picture) {
        // Painting leaves its clipping behind, so every time takes a new one.
        GC gc = new GC(picture);
        long start = System.nanoTime();
        canvas.getLightweightSystem().paint(gc);
        double ms = (System.nanoTime() - start) / 1e6;
        gc.dispose();
        return ms;
    }

    @Test
    void paintsSixStagesInALargeWindowWithinAFrame() throws IOException {
        open(Stacks.six(LONG));
        Desk.page().toggleZoom(Desk.page().getActivePartReference());
        Desk.settle();
        StringBuilder report = new StringBuilder();
        for (double size = 0.03; size < 200; size *= 3) {
            while (drawn() / LONG < size) {
                Point body = sight.body(0);
                Desk.wheel(body.x, body.y, 1, SWT.MOD1);
            }
            double ms = paintTime();
            report.append(String.format(" %.2f ms at %.1f px a tooth,", ms, drawn() / LONG));
            assertTrue(ms < MOST_MS, "a paint takes " + ms + " ms at " + size + " px a tooth");
        }
        System.out.println("six stages in " + Desk.canvas().getSize() + ":" + report);
    }

    @Test
    void scrollsAlongTwentyThousandTeethSmoothly() throws IOException {
        open(Stacks.rack(LONG));
        Point body = sight.body(0);
        while (drawn() / LONG < 20) {
            Desk.wheel(body.x, body.y, 1, SWT.MOD1);
        }
        FigureCanvas canvas = Desk.canvas();
        Desk.key(SWT.HOME, 0);
        assertEquals(0, canvas.getViewport().getViewLocation().x);
        Image picture = picture(canvas);
        double[] ms = new double[100];
        int step = (int) (drawn() / 150);
        for (int i = 0; i < ms.length; i++) {
            long start = System.nanoTime();
            canvas.scrollToX((i + 1) * step);
            ms[i] = (System.nanoTime() - start) / 1e6 + paint(canvas, picture);
            assertEquals((i + 1) * step, canvas.getViewport().getViewLocation().x);
        }
        picture.dispose();
        Arrays.sort(ms);
        System.out.printf("scrolling 20 000 teeth of 20 px: median %.2f ms, slowest %.2f ms a step%n", ms[50], ms[99]);
        assertTrue(ms[50] < MOST_MS, "a step takes " + ms[50] + " ms");
        Desk.key(SWT.END, 0);
        assertEquals(canvas.getViewport().getHorizontalRangeModel().getMaximum() - windowWidth(),
                canvas.getViewport().getViewLocation().x);
    }
}
