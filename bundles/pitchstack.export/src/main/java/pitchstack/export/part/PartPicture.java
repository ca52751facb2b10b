// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.List;
import pitchstack.core.geometry.Outline;
import pitchstack.core.geometry.Point;
import pitchstack.core.geometry.solid.Coupon;
import pitchstack.core.geometry.solid.Extent;
import pitchstack.core.geometry.solid.Placement;
import pitchstack.core.geometry.solid.Pocket;
import pitchstack.core.geometry.solid.RowSolid;
import pitchstack.export.plot.Picture;

/** Parts as they lie on the bed, seen from above, which is the side view of a row. */
public final class PartPicture {
    private static final int MARGIN_PX = 20;
    private static final Color BODY = new Color(0xc9d3dd);
    private static final Color INK = new Color(0x1f2933);
    private static final BasicStroke LINE = new BasicStroke(1);

    private final BufferedImage image;
    private final Graphics2D graphics;
    private final double pxPerMm;
    private final double leftPx;
    private final double frontPx;

    private PartPicture(Extent extent, int widthPx, int heightPx) {
        image = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_INT_RGB);
        graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, widthPx, heightPx);
        graphics.setStroke(LINE);
        pxPerMm = Math.min((widthPx - 2.0 * MARGIN_PX) / extent.xMm(), (heightPx - 2.0 * MARGIN_PX) / extent.yMm());
        leftPx = (widthPx - extent.xMm() * pxPerMm) / 2;
        frontPx = (heightPx + extent.yMm() * pxPerMm) / 2;
    }

    /**
     * Rows, as large as there is room for.
     *
     * @param rows the front of the bed comes to lie at the bottom of the picture
     * @param widthPx above 40
     * @param heightPx above 40
     */
    public static Picture ofRows(PartFile<RowSolid> rows, int widthPx, int heightPx) {
        PartPicture picture = new PartPicture(rows.extent(), widthPx, heightPx);
        rows.plate().forEach(picture::row);
        return picture.done();
    }

    /** The coupon, likewise. */
    public static Picture ofCoupon(PartFile<Coupon> coupon, int widthPx, int heightPx) {
        PartPicture picture = new PartPicture(coupon.extent(), widthPx, heightPx);
        coupon.plate().forEach(placed -> picture.area(placed.solid().outline(), placed.yMm(), BODY));
        return picture.done();
    }

    private void row(Placed<RowSolid> placed) {
        RowSolid row = placed.solid();
        Placement placement = row.placement();
        area(flat(row.sideView(), placement), placed.yMm(), BODY);
        row.plan().holes().forEach(hole -> area(flat(hole, placement), placed.yMm(), Color.WHITE));
        for (Pocket pocket : row.plan().pockets()) {
            graphics.draw(path(laid(pocket.rim(), placement), placed.yMm()));
            pocket.islands().forEach(island -> graphics.draw(path(laid(island, placement), placed.yMm())));
        }
    }

    /** Chords stand off arcs by less than half a pixel. */
    private List<Point> flat(Outline outline, Placement placement) {
        return laid(outline.polygon(0.5 / pxPerMm), placement);
    }

    private static List<Point> laid(List<Point> ring, Placement placement) {
        return ring.stream().map(p -> new Point(placement.x(p), placement.y(p))).toList();
    }

    private void area(List<Point> ring, double yMm, Color colour) {
        Path2D path = path(ring, yMm);
        graphics.setColor(colour);
        graphics.fill(path);
        graphics.setColor(INK);
        graphics.draw(path);
    }

    private Path2D path(List<Point> ring, double yMm) {
        Path2D path = new Path2D.Double();
        for (Point p : ring) {
            double x = leftPx + p.x() * pxPerMm;
            double y = frontPx - (p.y() + yMm) * pxPerMm;
            if (path.getCurrentPoint() == null) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        path.closePath();
        return path;
    }

    private Picture done() {
        graphics.dispose();
        return Picture.of(image);
    }
}
