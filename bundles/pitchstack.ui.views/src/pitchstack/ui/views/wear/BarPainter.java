// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;
import pitchstack.ui.views.coverage.Ink;
import pitchstack.ui.views.coverage.strip.Sight;

/**
 * Paints the seatings of a row: a bar a tooth, the number of seatings at the left, tooth numbers below, and marked teeth
 * hatched between bars and numbers.
 *
 * @param ink the colours
 */
record BarPainter(Ink ink) {
    /** Of the height of the text, and so as wide as the word below it. */
    private static final double LEFT_PART = 2.7;
    private static final int RIGHT_PX = 16;
    private static final int BAND_PX = 8;
    private static final int TICK_PX = 5;
    private static final double LEAST_TICKS_PART = 2.6;
    private static final int LEAST_GAP_PX = 4;
    private static final int LEAST_BARS_PX = 8;

    /** Where the bars stand in an area. */
    static Rectangle bars(Rectangle area, int textHeight) {
        int top = area.y + textHeight + 4;
        int bottom = area.y + area.height - textHeight - TICK_PX - BAND_PX - 3;
        int left = left(textHeight);
        return new Rectangle(area.x + left, top, Math.max(1, area.width - left - RIGHT_PX),
                Math.max(LEAST_BARS_PX, bottom - top));
    }

    /** How wide the numbers at the left are. */
    static int left(int textHeight) {
        return (int) Math.ceil(LEFT_PART * textHeight);
    }

    /** Paints all. */
    void paint(GC gc, Bars bars, Rectangle area) {
        int text = gc.getFontMetrics().getHeight();
        Rectangle plot = bars(area, text);
        columns(gc, bars, plot);
        heights(gc, bars, plot, text);
        marks(gc, bars, new Rectangle(plot.x, plot.y + plot.height + 1, plot.width, BAND_PX));
        numbers(gc, bars, plot);
        gc.setForeground(ink.text());
        title(gc, bars.title(), plot, area);
    }

    /** Above the bars, or from the left edge on where it is too long for that, and cut where it is still too long. */
    private static void title(GC gc, String title, Rectangle plot, Rectangle area) {
        int x = gc.textExtent(title).x <= area.x + area.width - plot.x ? plot.x : area.x + 2;
        String kept = title;
        while (kept.length() > 1 && gc.textExtent(kept).x > area.x + area.width - x) {
            kept = kept.substring(0, kept.length() - 2) + "…";
        }
        gc.drawText(kept, x, area.y, true);
    }

    private void columns(GC gc, Bars bars, Rectangle plot) {
        int most = Math.max(1, bars.most());
        gc.setBackground(ink.bar());
        double toothPx = plot.width / bars.sight().size();
        int gap = toothPx >= LEAST_GAP_PX ? 1 : 0;
        for (int x = 0; x < plot.width; x++) {
            int first = (int) Math.floor(bars.sight().position(x, plot.width));
            int end = (int) Math.ceil(bars.sight().position(x + 1, plot.width));
            int count = bars.most(first, end - 1);
            boolean edge = gap > 0 && first != (int) Math.floor(bars.sight().position(x - 1, plot.width));
            int height = (int) Math.round((double) count / most * plot.height);
            if (height > 0 && !edge) {
                gc.fillRectangle(plot.x + x, plot.y + plot.height - height, 1, height);
            }
        }
        gc.setForeground(ink.hair());
        gc.drawLine(plot.x, plot.y + plot.height, plot.x + plot.width - 1, plot.y + plot.height);
        gc.drawLine(plot.x - 1, plot.y, plot.x - 1, plot.y + plot.height);
    }

    private void heights(GC gc, Bars bars, Rectangle plot, int text) {
        gc.setForeground(ink.text());
        height(gc, String.valueOf((long) bars.most() * bars.times()), plot.y, plot);
        if (plot.height > 2 * text) {
            height(gc, "0", plot.y + plot.height, plot);
        }
    }

    private void height(GC gc, String number, int y, Rectangle plot) {
        int width = gc.textExtent(number).x;
        gc.drawText(number, plot.x - TICK_PX - 2 - width, y - gc.getFontMetrics().getHeight() / 2, true);
        gc.drawLine(plot.x - TICK_PX, y, plot.x - 2, y);
    }

    private void marks(GC gc, Bars bars, Rectangle band) {
        gc.setForeground(ink.text());
        for (WornRange range : bars.marks()) {
            int left = x(bars.sight(), range.teeth().first(), band);
            int right = Math.max(left + 2, x(bars.sight(), range.teeth().last() + 1.0, band));
            Rectangle area = new Rectangle(left, band.y, right - left, band.height).intersection(band);
            if (!area.isEmpty()) {
                HatchImages.hatch(gc, area, range.wear() == Wear.BARRED, false);
                gc.drawRectangle(area.x, area.y, area.width - 1, area.height - 1);
            }
        }
    }

    private void numbers(GC gc, Bars bars, Rectangle plot) {
        Sight sight = bars.sight();
        int top = plot.y + plot.height + BAND_PX + 1;
        long step = step(sight.size() * LEAST_TICKS_PART * gc.getFontMetrics().getHeight() / plot.width);
        int last = (int) Math.min(bars.counts().length - 1.0, Math.floor(sight.to()));
        for (long tooth = (long) Math.ceil(sight.from() / step) * step; tooth <= last; tooth += step) {
            int x = x(sight, tooth + 0.5, plot);
            if (x >= plot.x && x < plot.x + plot.width) {
                gc.setForeground(ink.hair());
                gc.drawLine(x, top, x, top + TICK_PX);
                gc.setForeground(ink.text());
                gc.drawText(String.valueOf(tooth), x - gc.textExtent(String.valueOf(tooth)).x / 2, top + TICK_PX, true);
            }
        }
        gc.drawText("tooth", plot.x - TICK_PX - 2 - gc.textExtent("tooth").x, top + TICK_PX, true);
    }

    private static int x(Sight sight, double tooth, Rectangle in) {
        return in.x + (int) Math.floor(sight.x(tooth, in.width));
    }

    /** The roundest number of teeth, 1, 2 or 5 times a power of ten, that is at least so many. */
    private static long step(double least) {
        long power = 1;
        while (power * 10 <= least) {
            power *= 10;
        }
        return least <= power ? power : least <= 2 * power ? 2 * power : least <= 5 * power ? 5 * power : 10 * power;
    }
}
