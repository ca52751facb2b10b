// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.pictures;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;

/**
 * One page with a drawing on it.
 *
 * @param drawing the drawing
 * @param name of the print job
 */
public record PrintedPage(ImageData drawing, String name) {
    private static final double MARGIN_INCHES = 0.4;

    /** The printable part of a page, and how the drawing stands on it, in the dots of the printer. */
    static PageFit fit(Printer printer) {
        Point dpi = printer.getDPI();
        return new PageFit(printer.getClientArea(), (int) Math.round(MARGIN_INCHES * dpi.x));
    }

    /** Prints it. */
    public void print(PrinterData data) {
        Printer printer = new Printer(data);
        try {
            if (printer.startJob(name)) {
                printer.startPage();
                paint(printer);
                printer.endPage();
                printer.endJob();
            }
        } finally {
            printer.dispose();
        }
    }

    private void paint(Printer printer) {
        Image image = new Image(printer, drawing);
        GC gc = new GC(printer);
        Rectangle place = fit(printer).place(drawing.width, drawing.height);
        gc.drawImage(image, 0, 0, drawing.width, drawing.height, place.x, place.y, place.width, place.height);
        gc.dispose();
        image.dispose();
    }
}
