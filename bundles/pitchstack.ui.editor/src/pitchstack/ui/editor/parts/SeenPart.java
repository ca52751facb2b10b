// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.Viewport;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import pitchstack.ui.editor.places.Bands;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.Mapping;

/** The part of the drawing that is seen: through the window, or for a while on a sheet of its own. */
final class SeenPart {
    private final FigureCanvas canvas;
    private Dimension sheet;

    SeenPart(FigureCanvas canvas) {
        this.canvas = canvas;
    }

    /** Tells whenever another part is seen. */
    void onChange(Runnable changed) {
        Viewport viewport = canvas.getViewport();
        viewport.addPropertyChangeListener(Viewport.PROPERTY_VIEW_LOCATION, event -> changed.run());
        viewport.addFigureListener(figure -> changed.run());
    }

    /** Where it is in the drawing, and how large. */
    Rectangle bounds() {
        if (sheet != null) {
            return new Rectangle(0, 0, sheet.width, sheet.height);
        }
        Viewport viewport = canvas.getViewport();
        Dimension size = viewport.getClientArea().getSize();
        Point at = viewport.getViewLocation();
        return new Rectangle(at.x, at.y, size.width, size.height);
    }

    /** The height of a scroll bar, for which room is kept below. */
    int barHeight() {
        return canvas.getHorizontalBar().getSize().y;
    }

    /** Takes a sheet in place of the window; {@code null} for the window again. */
    void layOut(Dimension size) {
        sheet = size;
    }

    /** Whether the drawing is laid out on a sheet now, and not in the window. */
    boolean isOnSheet() {
        return sheet != null;
    }

    /** Lays out what was changed. */
    void validate() {
        canvas.getViewport().validate();
    }

    /** The pixel of the drawing at the top left of the canvas. */
    Point scrolled() {
        return canvas.getViewport().getViewLocation().getCopy();
    }

    /** Scrolls as far as the drawing goes. */
    void scrollTo(int x, int y) {
        canvas.scrollTo(x, y);
    }

    /** Scrolls as little as needed until a part of the drawing is in sight, in the span that labels leave open. */
    void reveal(Rectangle part, Extent open) {
        Rectangle seen = bounds();
        Point at = scrolled();
        boolean outside = part.right() < open.from() + EdgeScroll.NEAR || part.x > open.to() - EdgeScroll.NEAR;
        int x = outside ? part.x + part.width / 2 - (Mapping.GUTTER + seen.width) / 2 : at.x;
        int above = part.y - Bands.RULER;
        int y = above < at.y ? above : Math.max(at.y, Math.min(above, part.bottom() - seen.height));
        if (x != at.x || y != at.y) {
            scrollTo(x, y);
        }
    }

    /** The nearest spot at which a figure is wholly in sight. */
    Point inSight(Point wanted, Dimension size) {
        Rectangle seen = bounds();
        return new Point(Math.max(seen.x + Mapping.GUTTER, Math.min(seen.right() - size.width, wanted.x)),
                Math.max(seen.y + Bands.RULER, Math.min(seen.bottom() - size.height, wanted.y)));
    }
}
