// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.handles.AbstractHandle;
import pitchstack.ui.editor.places.Bands;

/** A handle at an end of a row, by which it is lengthened or shortened. */
final class RowEndHandle extends AbstractHandle {
    private static final int WIDTH = 8;
    private static final int HEIGHT = 16;

    private final RowEditPart row;
    private final SideView view;
    private final boolean start;

    /** @param start whether it is the end at tooth 0 */
    RowEndHandle(RowEditPart row, SideView view, boolean start) {
        super(row, handle -> place(handle, row, start), Cursors.SIZEWE);
        this.row = row;
        this.view = view;
        this.start = start;
    }

    /** Half outside the row, on the strip that its teeth stand on. */
    private static void place(IFigure handle, RowEditPart row, boolean start) {
        Rectangle bounds = row.getFigure().getBounds();
        int x = start ? bounds.x : bounds.right() - 1;
        int y = row.isBase() ? bounds.bottom() - Bands.STRIP / 2 : bounds.y + Bands.STRIP / 2;
        handle.setBounds(new Rectangle(x - WIDTH / 2, y - HEIGHT / 2, WIDTH, HEIGHT));
    }

    /** Where the labels cover the row there is nothing to take hold of. */
    private boolean covered() {
        return getBounds().right() < view.scene().open().from();
    }

    @Override
    public boolean containsPoint(int x, int y) {
        return super.containsPoint(x, y) && !covered();
    }

    @Override
    public void paintFigure(Graphics graphics) {
        if (!covered()) {
            graphics.setBackgroundColor(view.look().ground());
            graphics.fillRectangle(getBounds());
            graphics.setForegroundColor(view.look().selection());
            graphics.setLineWidth(2);
            graphics.drawRectangle(getBounds().getCopy().shrink(1, 1));
        }
    }

    @Override
    protected DragTracker createDragTracker() {
        return new RowEndTracker(row, view, start);
    }
}
