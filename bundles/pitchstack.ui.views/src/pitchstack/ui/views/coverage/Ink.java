// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
import pitchstack.ui.views.coverage.strip.Column;
import pitchstack.ui.views.coverage.strip.StripPixels;
import pitchstack.ui.views.coverage.strip.StripPixels.Paint;

/** Colours of the strip, made from those of the system so that a dark theme stays dark. */
public final class Ink {
    private static final RGB CLEAN = new RGB(84, 124, 158);
    private static final RGB WORN = new RGB(178, 96, 20);
    private static final RGB MARK = new RGB(188, 32, 48);

    private final RGB ground;
    private final RGB text;

    /** The colours that suit a display. */
    public Ink(Display display) {
        ground = display.getSystemColor(SWT.COLOR_LIST_BACKGROUND).getRGB();
        text = display.getSystemColor(SWT.COLOR_LIST_FOREGROUND).getRGB();
    }

    /** Behind all. */
    public Color ground() {
        return new Color(ground);
    }

    /** Words and numbers. */
    public Color text() {
        return new Color(text);
    }

    /** Words of less weight, still well readable. */
    public Color softText() {
        return new Color(blend(ground, text, 0.68));
    }

    /** Thin lines that only part one thing from another. */
    public Color hair() {
        return new Color(blend(ground, text, 0.35));
    }

    /** Where the carriage stands. */
    public Color mark() {
        return new Color(blend(MARK, text, isDark() ? 0.5 : 0));
    }

    /** Bars of what is clean or counted. */
    public Color bar() {
        return new Color(colour(Paint.CLEAN));
    }

    /** A picture of columns. */
    ImageData picture(Column[] columns, int height) {
        PaletteData palette = new PaletteData(0xff0000, 0xff00, 0xff);
        ImageData picture = new ImageData(columns.length, height, 24, palette);
        Paint[] paints = Paint.values();
        int[] pixels = new int[paints.length];
        for (Paint paint : paints) {
            pixels[paint.ordinal()] = palette.getPixel(colour(paint));
        }
        StripPixels strip = new StripPixels(columns, height);
        int[] row = new int[columns.length];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < row.length; x++) {
                row[x] = pixels[strip.at(x, y).ordinal()];
            }
            picture.setPixels(0, y, row.length, row, 0);
        }
        return picture;
    }

    /** The colour of a part of the strip. */
    public RGB colour(Paint paint) {
        return switch (paint) {
            case GROUND -> ground;
            case CLEAN -> isDark() ? blend(CLEAN, text, 0.15) : blend(ground, CLEAN, 0.9);
            case WORN -> blend(ground, WORN, 0.25);
            case HATCH -> isDark() ? blend(WORN, text, 0.3) : WORN;
            case NOT -> blend(ground, text, 0.5);
            case MIXED -> blend(ground, text, 0.1);
            case LOST -> isDark() ? blend(MARK, text, 0.5) : MARK;
        };
    }

    private boolean isDark() {
        return ground.red + ground.green + ground.blue < 3 * 128;
    }

    private static RGB blend(RGB from, RGB to, double part) {
        return new RGB(blend(from.red, to.red, part), blend(from.green, to.green, part), blend(from.blue, to.blue, part));
    }

    private static int blend(int from, int to, double part) {
        return (int) Math.round(from + (to - from) * part);
    }
}
