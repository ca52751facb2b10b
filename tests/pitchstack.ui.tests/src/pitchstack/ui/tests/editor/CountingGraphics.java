// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.SWTGraphics;
import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Path;

/** Draws, and counts what it was asked to draw: every line, shape and text once, a path by its corners. */
final class CountingGraphics extends SWTGraphics {
    private long count;

    private CountingGraphics(GC gc) {
        super(gc);
    }

    /** How much is drawn when a canvas paints all that is seen. */
    static long of(FigureCanvas canvas) {
        Image picture = picture(canvas);
        GC gc = new GC(picture);
        CountingGraphics graphics = new CountingGraphics(gc);
        graphics.setClip(new Rectangle(0, 0, canvas.getSize().x, canvas.getSize().y));
        canvas.getLightweightSystem().getRootFigure().paint(graphics);
        graphics.dispose();
        gc.dispose();
        picture.dispose();
        return graphics.count;
    }

    /** A picture in our own memory: one of the window system's would be painted by the system, later. */
    static Image picture(FigureCanvas canvas) {
        PaletteData colours = new PaletteData(0xFF0000, 0xFF00, 0xFF);
        return new Image(canvas.getDisplay(), new ImageData(canvas.getSize().x, canvas.getSize().y, 24, colours));
    }

    private void path(Path path) {
        count += path.getPathData().points.length / 2;
    }

    @Override
    public void drawPath(Path path) {
        path(path);
        super.drawPath(path);
    }

    @Override
    public void fillPath(Path path) {
        path(path);
        super.fillPath(path);
    }

    @Override
    public void drawLine(int x1, int y1, int x2, int y2) {
        count++;
        super.drawLine(x1, y1, x2, y2);
    }

    @Override
    public void drawString(String text, int x, int y) {
        count++;
        super.drawString(text, x, y);
    }

    @Override
    public void drawRectangle(int x, int y, int width, int height) {
        count++;
        super.drawRectangle(x, y, width, height);
    }

    @Override
    public void fillRectangle(int x, int y, int width, int height) {
        count++;
        super.fillRectangle(x, y, width, height);
    }

    @Override
    public void fillPolygon(PointList points) {
        count += points.size();
        super.fillPolygon(points);
    }

    @Override
    public void fillPolygon(int[] points) {
        count += points.length / 2;
        super.fillPolygon(points);
    }

    @Override
    public void drawPolygon(int[] points) {
        count += points.length / 2;
        super.drawPolygon(points);
    }
}
