// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import org.eclipse.draw2d.Graphics;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.widgets.Display;

/**
 * One shape with parts of a pixel. The graphics must have been moved so that the shape is near its origin: paths are
 * kept as {@code float}, which far to the right has no parts of a pixel left.
 */
final class FinePen implements AutoCloseable {
    /** The corners of a convex shape, in order around it. */
    record Corners(double[] xs, double[] ys) { }

    private final Graphics graphics;
    private final Path path = new Path(Display.getCurrent());
    private boolean begun;

    FinePen(Graphics graphics) {
        this.graphics = graphics;
    }

    FinePen to(double x, double y) {
        if (begun) {
            path.lineTo((float) x, (float) y);
        } else {
            path.moveTo((float) x, (float) y);
            begun = true;
        }
        return this;
    }

    /** The next point begins a new line. */
    FinePen lift() {
        begun = false;
        return this;
    }

    FinePen shape(Corners shape) {
        for (int i = 0; i < shape.xs().length; i++) {
            to(shape.xs()[i], shape.ys()[i]);
        }
        path.close();
        return lift();
    }

    void fill() {
        graphics.fillPath(path);
    }

    void draw() {
        graphics.drawPath(path);
    }

    @Override
    public void close() {
        path.dispose();
    }
}
