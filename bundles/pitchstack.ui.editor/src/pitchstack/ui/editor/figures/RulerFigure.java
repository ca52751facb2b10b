// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import java.util.OptionalDouble;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;
import pitchstack.core.units.RulerStep;
import pitchstack.core.units.TrueMinus;
import pitchstack.ui.editor.places.Bands;
import pitchstack.ui.editor.places.Dots;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.Mapping;
import pitchstack.ui.editor.places.Scene;

/** The position scale along the top, with a pointer and a flag at the carriage. It stays at the top while bodies scroll. */
public final class RulerFigure extends SceneFigure {
    private static final int LONG_TICK = 10;
    private static final int SHORT_TICK = 5;
    private static final int POINTER = 7;
    private static final int PAD = 6;
    /** The height of the line that strikes out what lies beyond a stop. */
    private static final int STRIKE = 3;
    private static final int TITLE_LEFT = 14;

    private String title = "";
    private String position = "";
    private Dots dots = Dots.NONE;
    private double dotsFrom;
    private OptionalDouble pointed = OptionalDouble.empty();
    private String pointedAt = "";

    /** A ruler of any axis. */
    public RulerFigure(Look look) {
        super(look);
    }

    /**
     * Shows the ruler.
     *
     * @param called what is measured, shown at its left
     * @param carriage the position of the carriage in words
     */
    public void show(Scene scene, String called, String carriage) {
        title = called;
        position = carriage;
        show(scene, scene.left(), scene.top(), scene.width(), Bands.RULER);
    }

    /** Marks the positions that can be reached, as offsets from a place. */
    public void showDots(double from, Dots found) {
        dots = found;
        dotsFrom = from;
        repaint();
    }

    /**
     * Marks a place that is pointed at elsewhere in the window, or none.
     *
     * @param place on the unrolled axis
     * @param words its position in words
     */
    public void point(OptionalDouble place, String words) {
        pointed = place;
        pointedAt = words;
        repaint();
    }

    @Override
    void paintScene(Graphics graphics) {
        graphics.setBackgroundColor(look().panel());
        graphics.fillRectangle(getBounds());
        int foot = getBounds().bottom() - 1;
        graphics.setForegroundColor(look().hair());
        graphics.drawLine(getBounds().x, foot, getBounds().right(), foot);
        graphics.drawLine(getBounds().x + Mapping.GUTTER - 1, getBounds().y, getBounds().x + Mapping.GUTTER - 1, foot);
        graphics.setFont(look().plain());
        graphics.setForegroundColor(look().softInk());
        paintTitle(graphics, foot);
        Extent open = scene().open();
        graphics.clipRect(new Rectangle(whole(open.from()), getBounds().y, whole(open.length()),
                getBounds().height));
        Extent flag = flag(open);
        paintTicks(graphics, open, flag, foot);
        scene().spec().low().ifPresent(low -> paintStop(graphics, low, -1, foot));
        scene().spec().high().ifPresent(high -> paintStop(graphics, high, 1, foot));
        pointed.ifPresent(place -> paintPointed(graphics, scene().mapping().px(place), flag, foot));
        paintDots(graphics, open, foot);
        paintPointer(graphics, open, flag, foot);
    }

    /** What is measured and, where there are dots, what they are. */
    private void paintTitle(Graphics graphics, int foot) {
        int x = getBounds().x + TITLE_LEFT;
        if (dots.offsets().length == 0) {
            graphics.drawString(title, x, getBounds().y + (getBounds().height - height(look().plain())) / 2);
            return;
        }
        // Large letters leave nothing free above and below them.
        int free = Math.min(3, (getBounds().height - 1 - height(look().plain()) - height(look().small())) / 2);
        graphics.drawString(title, x, getBounds().y + free);
        graphics.setFont(look().small());
        String words = dots.thinned() ? "dots: in reach, thinned out" : "dots: every position in reach";
        graphics.drawString(fitting(words, look().small(), Mapping.GUTTER - 2 * TITLE_LEFT), x,
                foot - height(look().small()) - free);
    }

    /** Dots on the line at positions that can be reached; where they would touch, a bar stands for them. */
    private void paintDots(Graphics graphics, Extent open, int foot) {
        double from = scene().mapping().px(dotsFrom);
        double last = Double.NEGATIVE_INFINITY;
        graphics.setBackgroundColor(look().mark());
        for (long offset : dots.offsets()) {
            double px = from + offset * scene().mapping().pxPerCount();
            if (px >= open.from() && px <= open.to()) {
                int width = px - last < Scene.LEAST_DOTS_PX - 1 ? whole(px) - whole(last) + 1 : 2;
                graphics.fillRectangle(whole(px) - width + 1, foot - 3, width, 3);
            }
            last = px;
        }
    }

    private double carriagePx() {
        return scene().mapping().px(scene().places().carriage());
    }

    private String flagText(Extent open) {
        return carriagePx() < open.from() ? "◂ " + position : carriagePx() > open.to() ? position + " ▸" : position;
    }

    private Extent flag(Extent open) {
        double width = width(flagText(open), look().bold()) + 2.0 * PAD;
        double left = Math.max(open.from() + 2, Math.min(open.to() - 2 - width, carriagePx() - width / 2));
        return new Extent(left, left + width);
    }

    private void paintTicks(Graphics graphics, Extent open, Extent flag, int foot) {
        RulerStep step = scene().ruler();
        Extent places = scene().mapping().places(open);
        long first = (long) Math.floor(places.from() / step.counts());
        long last = (long) Math.ceil(places.to() / step.counts());
        graphics.setFont(look().small());
        for (long k = first; k <= last; k++) {
            for (int part = 0; part < step.parts(); part++) {
                int x = whole(scene().mapping().px((k + part / (double) step.parts()) * step.counts()));
                graphics.setForegroundColor(part == 0 ? look().ink() : look().softInk());
                graphics.drawLine(x, foot - (part == 0 ? LONG_TICK : SHORT_TICK), x, foot);
            }
            String text = TrueMinus.in(step.label().apply(k));
            int width = width(text, look().small());
            double x = scene().mapping().px(k * step.counts()) - width / 2.0;
            boolean fits = x >= open.from() + 1 && x + width <= open.to() - 1;
            if (fits && (x + width + PAD < flag.from() || x - PAD > flag.to())) {
                graphics.setForegroundColor(look().softInk());
                graphics.drawString(text, whole(x), foot - LONG_TICK - height(look().small()) - 1);
            }
        }
    }

    /** Beyond a stop the ruler is struck out. */
    private void paintStop(Graphics graphics, long at, int side, int foot) {
        double px = scene().mapping().px(at);
        Extent beyond = side < 0 ? new Extent(scene().open().from(), px) : new Extent(px, scene().open().to());
        graphics.setForegroundColor(look().softInk());
        if (!beyond.isEmpty()) {
            graphics.drawLine(whole(beyond.from()), foot - STRIKE, whole(beyond.to()), foot - STRIKE);
        }
    }

    /** A hollow pointer, with its position beside it where the carriage's flag leaves room. */
    private void paintPointed(Graphics graphics, double px, Extent flag, int foot) {
        graphics.setFont(look().small());
        double width = width(pointedAt, look().small());
        double left = Math.max(scene().open().from() + 2, Math.min(scene().open().to() - width - 2, px - width / 2));
        int y = foot - LONG_TICK - height(look().small()) - 1;
        int x = whole(px);
        if (left + width + PAD < flag.from() || left - PAD > flag.to()) {
            graphics.setBackgroundColor(look().panel());
            graphics.fillRectangle(whole(left) - PAD, y, whole(width) + 2 * PAD, height(look().small()));
            graphics.setForegroundColor(look().mark());
            graphics.drawString(pointedAt, whole(left), y);
        }
        int[] corners = {x, foot, x - POINTER, foot - POINTER - 4, x + POINTER, foot - POINTER - 4};
        graphics.setBackgroundColor(look().ground());
        graphics.fillPolygon(corners);
        graphics.setForegroundColor(look().mark());
        graphics.drawPolygon(corners);
    }

    private void paintPointer(Graphics graphics, Extent open, Extent flag, int foot) {
        int top = getBounds().y + 5;
        graphics.setBackgroundColor(look().mark());
        graphics.fillRoundRectangle(new Rectangle(whole(flag.from()), top, whole(flag.length()),
                height(look().bold()) + 4), 6, 6);
        graphics.setFont(look().bold());
        graphics.setForegroundColor(look().ground());
        graphics.drawString(flagText(open), whole(flag.from()) + PAD, top + 2);
        int x = whole(carriagePx());
        graphics.fillPolygon(new int[] {x, foot, x - POINTER, foot - POINTER - 4, x + POINTER, foot - POINTER - 4});
    }
}
