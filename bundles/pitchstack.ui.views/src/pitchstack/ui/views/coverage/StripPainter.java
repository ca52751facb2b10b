// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import pitchstack.core.units.RulerStep;
import pitchstack.core.units.TrueMinus;
import pitchstack.ui.views.coverage.strip.Column;
import pitchstack.ui.views.coverage.strip.Shares;
import pitchstack.ui.views.coverage.strip.Sight;

/**
 * Paints a chart: the carriage's flag above, the strip, below it that of what is supposed, and a ruler. A band above the
 * strip shows what the selected mark costs.
 *
 * @param ink the colours
 */
record StripPainter(Ink ink) {
    /** Room at both sides, so that the numbers of the ends are not cut. */
    static final int SIDE_PX = 16;
    private static final int LEAST_TICKS_PX = 76;
    private static final int TICK_PX = 6;
    private static final int SMALL_TICK_PX = 3;
    private static final int FLAG_PX = 5;
    private static final int LEAST_STRIP_PX = 8;
    private static final int GAP_PX = 3;
    private static final int BAND_PX = 5;

    /** Where the strip stands in an area. */
    static Rectangle strip(Rectangle area, int textHeight) {
        int top = area.y + textHeight + FLAG_PX + 1;
        int bottom = area.y + area.height - textHeight - TICK_PX - 2;
        return new Rectangle(area.x + SIDE_PX, top, Math.max(1, area.width - 2 * SIDE_PX),
                Math.max(LEAST_STRIP_PX, bottom - top));
    }

    /** Paints all. */
    void paint(GC gc, Chart chart, Rectangle area) {
        int text = gc.getFontMetrics().getHeight();
        Rectangle strip = strip(area, text);
        chart.supposed().ifPresentOrElse(supposed -> {
            int half = (strip.height - GAP_PX) / 2;
            bars(gc, chart.shares(), chart.sight(), new Rectangle(strip.x, strip.y, strip.width, half));
            Rectangle lower = new Rectangle(strip.x, strip.y + strip.height - half, strip.width, half);
            bars(gc, supposed, chart.sight(), lower);
            named(gc, "now", strip);
            named(gc, "supposed", lower);
        }, () -> bars(gc, chart.shares(), chart.sight(), strip));
        chart.cost().ifPresent(cost -> band(gc, cost, chart.sight(), strip));
        ruler(gc, chart, strip, area);
        carriage(gc, chart, strip, area);
    }

    private void bars(GC gc, Shares shares, Sight sight, Rectangle strip) {
        if (strip.height > 0) {
            Image bars = new Image(gc.getDevice(), ink.picture(shares.columns(sight, strip.width), strip.height));
            gc.drawImage(bars, strip.x, strip.y);
            bars.dispose();
        }
    }

    /** Where the strip is high enough for a word; else the legend and the figures must do. */
    private void named(GC gc, String name, Rectangle strip) {
        if (strip.height < gc.getFontMetrics().getHeight()) {
            return;
        }
        gc.setBackground(ink.ground());
        gc.setForeground(ink.text());
        gc.drawText(" " + name + " ", strip.x, strip.y);
    }

    /** A line over each column in which the selected mark costs something. */
    private void band(GC gc, Shares cost, Sight sight, Rectangle strip) {
        gc.setBackground(ink.text());
        Column[] columns = cost.columns(sight, strip.width);
        for (int x = 0; x < columns.length; x++) {
            if (!columns[x].equals(Column.OUTSIDE)) {
                gc.fillRectangle(strip.x + x, strip.y - BAND_PX, 1, BAND_PX - 2);
            }
        }
    }

    private void ruler(GC gc, Chart chart, Rectangle strip, Rectangle area) {
        Sight sight = chart.sight();
        RulerStep step = RulerStep.of(chart.scale(), sight.size() * LEAST_TICKS_PX / strip.width);
        int bottom = strip.y + strip.height;
        gc.setForeground(ink.hair());
        gc.drawLine(strip.x, bottom, strip.x + strip.width - 1, bottom);
        double part = step.counts() / step.parts();
        for (long k = (long) Math.ceil(sight.from() / part); k * part <= sight.to(); k++) {
            int x = x(sight, k * part, strip);
            gc.setForeground(ink.hair());
            gc.drawLine(x, bottom, x, bottom + (k % step.parts() == 0 ? TICK_PX : SMALL_TICK_PX));
        }
        gc.setForeground(ink.text());
        String unit = chart.unit();
        for (long k = (long) Math.ceil(sight.from() / step.counts()); k * step.counts() <= sight.to(); k++) {
            String number = step.label().apply(k) + unit;
            // The first number carries the unit for all, and stands where it would without it.
            int width = gc.textExtent(step.label().apply(k)).x;
            int left = x(sight, k * step.counts(), strip) - width / 2;
            int right = area.x + area.width - gc.textExtent(number).x;
            gc.drawText(number, Math.max(area.x, Math.min(right, left)), bottom + TICK_PX + 1, true);
            unit = "";
        }
    }

    private void carriage(GC gc, Chart chart, Rectangle strip, Rectangle area) {
        Sight sight = chart.sight();
        boolean below = chart.carriage() < sight.from();
        boolean above = chart.carriage() > sight.to();
        String position = TrueMinus.in(chart.scale().format(chart.carriage()));
        String flag = below ? "◂ " + position : above ? position + " ▸" : position;
        int x = below ? strip.x : above ? strip.x + strip.width : x(sight, chart.carriage(), strip);
        int width = gc.textExtent(flag).x;
        gc.setForeground(ink.mark());
        gc.drawText(flag, Math.max(area.x, Math.min(area.x + area.width - width, x - width / 2)), area.y, true);
        if (below || above) {
            return;
        }
        gc.setBackground(ink.mark());
        gc.setAntialias(SWT.ON);
        gc.fillPolygon(new int[] {x - FLAG_PX, strip.y - FLAG_PX - 1, x + FLAG_PX + 1, strip.y - FLAG_PX - 1, x, strip.y});
        gc.setAntialias(SWT.OFF);
        gc.drawLine(x, strip.y, x, strip.y + strip.height + TICK_PX);
    }

    private static int x(Sight sight, double position, Rectangle strip) {
        return strip.x + (int) Math.min(strip.width - 1, Math.floor(sight.x(position, strip.width)));
    }
}
