// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.geometry.Point;
import pitchstack.ui.editor.places.Mapping;

/** Scrolls the drawing on while the pointer is held at a side of the canvas. */
final class EdgeScroll {
    /** How near the side, in pixels. */
    static final int NEAR = 24;
    /** How far it scrolls at once, in pixels. */
    static final int STEP = 18;
    private static final int STEP_MS = 30;

    private final SeenPart seen;
    private final FigureCanvas canvas;
    private boolean waiting;

    EdgeScroll(FigureCanvas canvas, SeenPart seen) {
        this.canvas = canvas;
        this.seen = seen;
    }

    /** At which side a point of the canvas is: −1 left, 1 right, 0 at none. */
    int edge(Point pointer) {
        return edge(pointer, NEAR);
    }

    /** The same with another distance, in pixels, that counts as near. */
    int edge(Point pointer, int near) {
        return pointer.x > seen.bounds().width - near ? 1 : pointer.x < Mapping.GUTTER + near ? -1 : 0;
    }

    /**
     * Scrolls by a step, a moment later, if the pointer is at a side.
     *
     * @param pointer in the canvas
     * @param then what to do after the step
     */
    void scroll(Point pointer, Runnable then) {
        int step = edge(pointer) * STEP;
        if (step == 0 || waiting) {
            return;
        }
        waiting = true;
        canvas.getDisplay().timerExec(STEP_MS, () -> {
            waiting = false;
            if (canvas.isDisposed()) {
                return;
            }
            int before = seen.scrolled().x;
            seen.scrollTo(before + step, seen.scrolled().y);
            if (seen.scrolled().x != before) {
                then.run();
            }
        });
    }
}
