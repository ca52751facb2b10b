// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.core.stack.Setting;
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

    /**
     * One line a stack: the median, and what nine of ten stay below, of a paint; and of a step of a drag with its paint; at
     * the fitting scale and at four sizes of a rack tooth.
     */
    @Test
    void measures() throws IOException {
        System.out.println("window of " + Display.getCurrent().getActiveShell().getSize());
        System.out.println("| stack | fitted | 4 px | 12 px | 60 px | 200 px |");
        measure("2 stages, 100 teeth", Stacks.rack(100));
        measure("2 stages, 1 000 teeth", Stacks.rack(1_000));
        measure("2 stages, 5 000 teeth", Stacks.rack(5_000));
        measure("2 stages, 20 000 teeth", Stacks.rack(20_000));
        measure("6 stages, 20 000 teeth, 796 worn", Stacks.six(20_000));
        measure("5 axes of 6 such stages", five());
    }

    private static Positioner five() {
        Positioner positioner = Stacks.six(20_000);
        while (positioner.getAxes().size() < 5) {
            positioner.getAxes().add(EcoreUtil.copy(positioner.getAxes().get(0)));
        }
        return positioner;
    }

    private void measure(String name, Positioner positioner) throws IOException {
        Session session = Desk.open(Stacks.save(positioner, folder.resolve("stack.pitchstack"))).getAdapter(Session.class);
        Desk.page().toggleZoom(Desk.page().getActivePartReference());
        Desk.settle();
        int teeth = session.analysis().spec().stages().get(0).rows().base().teeth();
        StringBuilder line = new StringBuilder("| " + name + " |");
        StringBuilder drag = new StringBuilder("| " + name + ", a step of a drag |");
        for (double size : TOOTH_PX) {
            Point body = new Sight(session).body(0);
            for (int notch = 0; notch < 80 && toothPx(teeth) < size; notch++) {
                Desk.wheel(body.x, body.y, 1, SWT.MOD1);
            }
            line.append(paint(Desk.canvas(), () -> { })).append(" |");
            drag.append(paint(Desk.canvas(), () -> step(session))).append(" |");
        }
        System.out.println(line + "\n" + drag);
        Desk.page().toggleZoom(Desk.page().getActivePartReference());
        Desk.closeAll();
    }

    private static double toothPx(int teeth) {
        return (Desk.canvas().getViewport().getHorizontalRangeModel().getMaximum() - Mapping.GUTTER - 2.0 * Mapping.MARGIN) / teeth;
    }

    /** Shows the lowest stage one tooth further, or back again, as a drag does. */
    private static void step(Session session) {
        Setting now = session.analysis().current();
        boolean there = session.preview().isPresent();
        session.preview(there ? null : now.with(0, now.index(0) + 1));
    }

    /** @param before what is done before each paint, its time included */
    private static String paint(FigureCanvas canvas, Runnable before) {
        Image picture = CountingGraphics.picture(canvas);
        double[] ms = new double[ROUNDS];
        for (int round = 0; round < ROUNDS; round++) {
            // Painting leaves its clipping behind, so every time takes a new one.
            GC gc = new GC(picture);
            long start = System.nanoTime();
            before.run();
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
