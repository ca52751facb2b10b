// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.chart;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageDataProvider;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import pitchstack.export.plot.Palette;
import pitchstack.export.plot.Picture;
import pitchstack.export.plot.Plot;
import pitchstack.export.plot.PlotLook;

/** How a chart has to be drawn to suit a control, and its pixels as the toolkit wants them. */
final class ChartLook {
    private static final double PERCENT = 100;
    /** The size of a font that makes lines of this height, roughly, for fonts without serifs. */
    private static final float FONT_OF_LINE = 0.8f;

    private ChartLook() {
    }

    /** The look that fills a control, or nothing where it is too small for a chart. */
    static Optional<PlotLook> of(Composite control) {
        Rectangle area = control.getClientArea();
        if (area.width < PlotLook.LEAST || area.height < PlotLook.LEAST) {
            return Optional.empty();
        }
        return Optional.of(new PlotLook(area.width, area.height, control.getMonitor().getZoom() / PERCENT,
                text(control), palette(control)));
    }

    /** As tall as the letters of the control's font, so that charts grow with the text of the screen. */
    static float text(Control control) {
        GC gc = new GC(control);
        int line = gc.getFontMetrics().getHeight();
        gc.dispose();
        return line * FONT_OF_LINE;
    }

    /** The colours of lists, which are light or dark as was chosen. */
    private static Palette palette(Control control) {
        return Palette.on(number(control.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND).getRGB()),
                number(control.getDisplay().getSystemColor(SWT.COLOR_LIST_FOREGROUND).getRGB()));
    }

    private static int number(RGB colour) {
        return colour.red << 16 | colour.green << 8 | colour.blue;
    }

    /** An image of what was drawn for a look; on a screen of another kind it is drawn again as sharp as that is. */
    static Image image(Control control, Picture picture, PlotLook look, Plot plot) {
        return new Image(control.getDisplay(), (ImageDataProvider) zoom -> {
            double scale = zoom / PERCENT;
            return data(scale == look.scale() ? picture
                    : plot.draw(new PlotLook(look.width(), look.height(), scale, look.textPt(), look.palette())));
        });
    }

    /** The pixels of a picture. */
    static ImageData data(Picture picture) {
        ImageData data = new ImageData(picture.width(), picture.height(), 24, new PaletteData(0xff0000, 0xff00, 0xff));
        for (int y = 0; y < picture.height(); y++) {
            data.setPixels(0, y, picture.width(), picture.rgb(), y * picture.width());
        }
        return data;
    }
}
