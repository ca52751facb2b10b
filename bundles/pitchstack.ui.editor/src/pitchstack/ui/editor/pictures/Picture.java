// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.pictures;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.SWTGraphics;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Device;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import pitchstack.ui.editor.StackPage;
import pitchstack.ui.editor.figures.Look;
import pitchstack.ui.editor.figures.Palette;

/** The drawing as a picture, drawn anew and larger, so that it stays sharp on paper. */
public final class Picture {
    /** Twice the pixels of the window. */
    private static final int FOR_SCREENS = 2;
    /** A page of 280 mm then has some 350 pixels an inch for a drawing that was 1000 wide. */
    private static final int FOR_PAPER = 4;
    /** The whole axis is laid out this wide, which makes its small text some 3 mm high on a page of 280 mm. */
    private static final int SHEET_WIDTH = 1100;
    /** A stack of more stages than this has room for is drawn with lower bodies. */
    private static final int SHEET_HEIGHT = 700;

    private final StackPage page;
    private PageTitle title;
    private ImageData made;

    private Picture(StackPage page) {
        this.page = page;
    }

    /** What is seen of a drawing, as it is seen. */
    static ImageData seen(StackPage page) {
        return new Picture(page).seen(FOR_SCREENS);
    }

    /**
     * For paper, dark on white in any window, with nothing selected and a title above.
     *
     * @param file the name of the file
     * @param whole the whole axis, whatever is seen of it
     */
    public static ImageData forPaper(StackPage page, String file, boolean whole) {
        Picture picture = new Picture(page);
        picture.title = PageTitle.of(file, page.view().session());
        page.view().look().with(Palette.PAPER, () -> picture.made = whole ? picture.whole() : picture.seen(FOR_PAPER));
        return picture.made;
    }

    private ImageData seen(int factor) {
        FigureCanvas canvas = (FigureCanvas) page.canvas();
        Point at = page.view().scrolled();
        return paint(canvas.getViewport().getSize().width, canvas.getViewport().getSize().height, at, factor);
    }

    private ImageData whole() {
        page.view().onSheet(SHEET_WIDTH, SHEET_HEIGHT,
                sheet -> made = paint(sheet.width, sheet.height, new Point(0, 0), FOR_PAPER));
        return made;
    }

    private ImageData paint(int width, int height, Point from, int factor) {
        Device device = page.canvas().getDisplay();
        IFigure drawing = page.drawing();
        Look look = page.view().look();
        int above = title == null ? 0 : title.height(look);
        Image image = new Image(device, width * factor, (height + above) * factor);
        GC gc = new GC(image);
        SWTGraphics graphics = new SWTGraphics(gc);
        try {
            gc.setBackground(look.ground());
            gc.fillRectangle(image.getBounds());
            gc.setAntialias(SWT.ON);
            gc.setTextAntialias(SWT.ON);
            graphics.setFont(page.canvas().getFont());
            graphics.scale(factor);
            if (title != null) {
                title.paint(graphics, look, width);
            }
            graphics.translate(-from.x, above - from.y);
            graphics.clipRect(new Rectangle(from.x, from.y, width, height));
            drawing.paint(graphics);
            return image.getImageData();
        } finally {
            graphics.dispose();
            gc.dispose();
            image.dispose();
        }
    }
}
