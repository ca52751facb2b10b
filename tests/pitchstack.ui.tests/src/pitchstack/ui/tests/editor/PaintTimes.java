// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.Session;
import pitchstack.model.Positioner;
import pitchstack.ui.editor.places.Mapping;

/** Measures how long a paint takes; no test by its name, run by {@code releng/benchmark paint}. */
class PaintTimes {
    private static final int ROUNDS = 60;
    private static final double[] TOOTH_PX = {0, 4, 12, 60, 200};

    @TempDir
    private Path folder;

    @AfterEach
    void close() {
        Desk.closeAll();
    }

    /** One line a stack: the median, and what nine of ten paints stay below, at the fitting scale and at four sizes of a rack tooth. */
    @Test
    void measures() throws IOException {
        System.out.println("| stack | fitted | 4 px | 12 px | 60 px | 200 px |");
        measure("2 stages, 200 teeth", Stacks.rack(200));
        measure("2 stages, 20 000 teeth", Stacks.rack(20_000));
        measure("6 stages, 20 000 teeth, 796 worn", Stacks.six(20_000));
    }

    private void measure(String name, Positioner positioner) throws IOException {
        Session session = Desk.open(Stacks.save(positioner, folder.resolve("stack.pitchstack"))).getAdapter(Session.class);
        Desk.page().toggleZoom(Desk.page().getActivePartReference());
        Desk.settle();
        int teeth = session.analysis().spec().stages().get(0).rows().base().teeth();
        StringBuilder line = new StringBuilder("| " + name + " |");
        for (double size : TOOTH_PX) {
            Point body = new Sight(session).body(0);
            for (int notch = 0; notch < 80 && toothPx(teeth) < size; notch++) {
                Desk.wheel(body.x, body.y, 1, SWT.MOD1);
            }
            line.append(paint(Desk.canvas())).append(" |");
        }
        System.out.println(line + " window " + Desk.canvas().getSize());
        Desk.page().toggleZoom(Desk.page().getActivePartReference());
        Desk.closeAll();
    }

    private static double toothPx(int teeth) {
        return (Desk.canvas().getViewport().getHorizontalRangeModel().getMaximum() - Mapping.GUTTER - 2.0 * Mapping.MARGIN) / teeth;
    }

    private static String paint(FigureCanvas canvas) {
        Image picture = CountingGraphics.picture(canvas);
        double[] ms = new double[ROUNDS];
        for (int round = 0; round < ROUNDS; round++) {
            // Painting leaves its clipping behind, so every time takes a new one.
            GC gc = new GC(picture);
            long start = System.nanoTime();
            canvas.getLightweightSystem().paint(gc);
            ms[round] = (System.nanoTime() - start) / 1e6;
            gc.dispose();
        }
        picture.dispose();
        Arrays.sort(ms);
        assertTrue(ms[0] > 0);
        return String.format(Locale.ROOT, " %.1f (%.1f)", ms[ROUNDS / 2], ms[ROUNDS * 9 / 10]);
    }
}
