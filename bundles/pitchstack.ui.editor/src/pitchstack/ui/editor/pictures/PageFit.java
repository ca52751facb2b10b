// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.pictures;

import org.eclipse.swt.graphics.Rectangle;

/**
 * Where a drawing goes on a page, in dots.
 *
 * @param page the part of the page that takes ink, its corner at x and y
 * @param margin kept free on every side of it
 */
public record PageFit(Rectangle page, int margin) {
    /**
     * The largest place for a drawing that keeps its shape: as wide or as high as the page allows, in the middle across,
     * at the top.
     *
     * @param width of the drawing, in units of its own, above 0
     * @param height the same
     */
    public Rectangle place(int width, int height) {
        int wide = Math.max(1, page.width - 2 * margin);
        int high = Math.max(1, page.height - 2 * margin);
        double scale = Math.min((double) wide / width, (double) high / height);
        int w = Math.max(1, (int) Math.round(width * scale));
        int h = Math.max(1, (int) Math.round(height * scale));
        return new Rectangle(page.x + margin + (wide - w) / 2, page.y + margin, w, h);
    }
}
