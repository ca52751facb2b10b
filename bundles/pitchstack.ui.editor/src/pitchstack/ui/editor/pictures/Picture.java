// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.pictures;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.SWTGraphics;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;

/** What a canvas shows, drawn anew and larger, so that it stays sharp on paper. */
final class Picture {
    /** Twice the pixels of the window. */
    static final int FOR_SCREENS = 2;
    /** A page of 280 mm then has some 350 pixels an inch for a drawing that was 1000 wide. */
    static final int FOR_PAPER = 4;

    private Picture() {
    }

    /**
     * Draws it.
     *
     * @param canvas a canvas that is laid out
     * @param factor how many times as large, at least 1
     */
    static ImageData of(FigureCanvas canvas, int factor) {
        Point size = canvas.getViewport().getSize().width > 0
                ? new Point(canvas.getViewport().getSize().width, canvas.getViewport().getSize().height) : canvas.getSize();
        Image image = new Image(canvas.getDisplay(), size.x * factor, size.y * factor);
        GC gc = new GC(image);
        SWTGraphics graphics = new SWTGraphics(gc);
        try {
            gc.setBackground(canvas.getBackground());
            gc.fillRectangle(image.getBounds());
            gc.setAntialias(SWT.ON);
            gc.setTextAntialias(SWT.ON);
            graphics.setFont(canvas.getFont());
            graphics.scale(factor);
            graphics.translate(-canvas.getViewport().getBounds().x, -canvas.getViewport().getBounds().y);
            canvas.getViewport().paint(graphics);
            return image.getImageData();
        } finally {
            graphics.dispose();
            gc.dispose();
            image.dispose();
        }
    }
}
