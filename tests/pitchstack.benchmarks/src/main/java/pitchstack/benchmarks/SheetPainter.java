// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;
import java.util.List;
import pitchstack.export.drawing.Drawing;
import pitchstack.export.drawing.LiberationSans;
import pitchstack.export.drawing.Mark;
import pitchstack.export.drawing.Pen;
import pitchstack.export.drawing.Point;

/** Paints a drawing as any program of Java would, for the rivals to turn into a file. */
final class SheetPainter {
    private final Drawing drawing;
    private final LiberationSans letters;

    SheetPainter(Drawing drawing, LiberationSans letters) {
        this.drawing = drawing;
        this.letters = letters;
    }

    void paint(Graphics2D graphics) {
        graphics.setColor(Color.BLACK);
        for (Mark mark : drawing.marks()) {
            if (mark instanceof Mark.Line line) {
                stroke(graphics, line.pen());
                graphics.draw(path(List.of(line.from(), line.to()), false));
            } else if (mark instanceof Mark.Path path) {
                stroke(graphics, path.pen());
                graphics.draw(path(path.points(), path.closed()));
            } else if (mark instanceof Mark.Area area) {
                graphics.fill(path(area.corners(), true));
            } else if (mark instanceof Mark.Circle circle) {
                stroke(graphics, circle.pen());
                graphics.draw(arc(circle.centre(), circle.radius(), 0, 360));
            } else if (mark instanceof Mark.Arc arc) {
                stroke(graphics, arc.pen());
                graphics.draw(arc(arc.centre(), arc.radius(), arc.fromDeg(), arc.toDeg() - arc.fromDeg()));
            } else {
                text(graphics, (Mark.Text) mark);
            }
        }
    }

    private static void stroke(Graphics2D graphics, Pen pen) {
        float[] dashes = new float[pen.dashesMm().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = pen.dashesMm().get(i).floatValue();
        }
        graphics.setStroke(dashes.length == 0 ? new BasicStroke((float) pen.widthMm()) : new BasicStroke((float) pen.widthMm(),
                BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0));
    }

    private double down(double y) {
        return drawing.sheet().heightMm() - y;
    }

    private Path2D path(List<Point> points, boolean closed) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0).x(), down(points.get(0).y()));
        points.subList(1, points.size()).forEach(point -> path.lineTo(point.x(), down(point.y())));
        if (closed) {
            path.closePath();
        }
        return path;
    }

    private Arc2D arc(Point centre, double radius, double fromDeg, double byDeg) {
        return new Arc2D.Double(centre.x() - radius, down(centre.y()) - radius, 2 * radius, 2 * radius, fromDeg, byDeg,
                Arc2D.OPEN);
    }

    private void text(Graphics2D graphics, Mark.Text text) {
        AffineTransform before = graphics.getTransform();
        graphics.translate(text.at().x(), down(text.at().y()));
        if (text.upwards()) {
            graphics.rotate(-Math.PI / 2);
        }
        graphics.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 1).deriveFont((float) letters.em(text.heightMm())));
        graphics.drawString(text.text(), (float) (-text.anchor().share() * letters.widthMm(text.text(), text.heightMm())), 0);
        graphics.setTransform(before);
    }
}
