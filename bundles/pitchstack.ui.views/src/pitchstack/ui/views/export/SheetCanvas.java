// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.export;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import pitchstack.export.plot.Picture;
import pitchstack.ui.views.Accessibles;

/** Shows a picture, such as a sheet of paper, as large as there is room for. */
final class SheetCanvas {
    private static final int DEPTH = 24;

    private final Canvas canvas;
    private Image image;
    private String told = "nothing yet";

    SheetCanvas(Composite parent) {
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER);
        Accessibles.name(canvas, () -> "Preview: " + told);
        canvas.addListener(SWT.Paint, event -> paint(event.gc));
        canvas.addListener(SWT.Dispose, event -> forget());
    }

    Canvas control() {
        return canvas;
    }

    /** Shows a picture, told to those who cannot see it. */
    void show(Picture picture, String words) {
        forget();
        told = words;
        ImageData data = new ImageData(picture.width(), picture.height(), DEPTH, new PaletteData(0xff0000, 0xff00, 0xff));
        for (int y = 0; y < picture.height(); y++) {
            data.setPixels(0, y, picture.width(), picture.rgb(), y * picture.width());
        }
        image = new Image(canvas.getDisplay(), data);
        canvas.redraw();
    }

    /** Shows nothing. */
    void clear(String words) {
        forget();
        told = words;
        canvas.redraw();
    }

    private void forget() {
        if (image != null) {
            image.dispose();
            image = null;
        }
    }

    private void paint(GC gc) {
        if (image == null) {
            return;
        }
        Rectangle room = canvas.getClientArea();
        Rectangle sheet = image.getBounds();
        double scale = Math.min((double) room.width / sheet.width, (double) room.height / sheet.height);
        int width = Math.max(1, (int) (sheet.width * scale));
        int height = Math.max(1, (int) (sheet.height * scale));
        gc.setAntialias(SWT.ON);
        gc.setInterpolation(SWT.HIGH);
        gc.drawImage(image, 0, 0, sheet.width, sheet.height, (room.width - width) / 2,
                (room.height - height) / 2, width, height);
    }
}
