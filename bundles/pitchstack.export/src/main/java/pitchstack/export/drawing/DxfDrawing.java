// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import pitchstack.export.Decimals;
import pitchstack.export.dxf.DxfR12;
import pitchstack.export.dxf.Layer;
import pitchstack.export.dxf.LineType;
import pitchstack.export.dxf.Vertex;

/**
 * Writes a drawing as DXF of Release 12: the sheet in millimetres, a layer for each kind of line, which carries its line
 * type; Release 12 has no widths, so a comment gives them. The check bar has a layer of its own.
 */
public final class DxfDrawing {
    private static final Layer TEXT = new Layer("TEXT");
    private static final Layer FILLED = new Layer("FILLED");
    private static final Layer CHECK_BAR = new Layer("CHECK_BAR");
    private static final double UPWARDS = 90;

    private final Drawing drawing;
    private final TextMeasure letters;
    private final Map<Pen, Layer> layers = new EnumMap<>(Pen.class);
    private final DxfR12 dxf;

    private DxfDrawing(Drawing drawing, TextMeasure letters) {
        this.drawing = drawing;
        this.letters = letters;
        List<String> comments = new ArrayList<>(List.of(drawing.title(), drawing.sheet() + ", " + drawing.date()));
        for (Pen pen : Pen.values()) {
            layers.put(pen, new Layer(pen.name(), 7, type(pen)));
            comments.add("Layer " + pen.name() + ": lines " + Decimals.of(pen.widthMm(), 2) + " mm wide");
        }
        List<Layer> all = new ArrayList<>(layers.values());
        all.addAll(List.of(TEXT, FILLED, CHECK_BAR));
        dxf = new DxfR12(comments, all);
    }

    /** The text of the file, ASCII. */
    public static String of(Drawing drawing, TextMeasure letters) {
        return new DxfDrawing(drawing, letters).write();
    }

    private static LineType type(Pen pen) {
        return switch (pen) {
            case FRAME, OUTLINE, THIN, HATCH -> LineType.CONTINUOUS;
            case HIDDEN -> LineType.DASHED;
            case CHAIN -> LineType.CENTER;
            case PHANTOM -> LineType.PHANTOM;
        };
    }

    private String write() {
        for (Part part : drawing.parts()) {
            boolean isBar = part.name().equals(CheckBar.NAME);
            part.marks().forEach(mark -> mark(mark, isBar));
        }
        return dxf.text();
    }

    private void mark(Mark mark, boolean isBar) {
        if (mark instanceof Mark.Line line) {
            dxf.line(layer(line.pen(), isBar), line.from().x(), line.from().y(), line.to().x(), line.to().y());
        } else if (mark instanceof Mark.Path path) {
            dxf.polyline(layer(path.pen(), isBar), vertices(path.points()), path.closed());
        } else if (mark instanceof Mark.Area area) {
            dxf.solid(isBar ? CHECK_BAR : FILLED, vertices(area.corners()));
        } else if (mark instanceof Mark.Circle circle) {
            dxf.circle(layer(circle.pen(), isBar), circle.centre().x(), circle.centre().y(), circle.radius());
        } else if (mark instanceof Mark.Arc arc) {
            dxf.arc(layer(arc.pen(), isBar), arc.centre().x(), arc.centre().y(), arc.radius(), arc.fromDeg(), arc.toDeg());
        } else {
            text((Mark.Text) mark);
        }
    }

    /** Between two ends, so that the letters of another font keep to their place. */
    private void text(Mark.Text text) {
        double width = letters.widthMm(text.text(), text.heightMm());
        double before = width * text.anchor().share();
        Point start = text.upwards() ? text.at().moved(0, -before) : text.at().moved(-before, 0);
        dxf.fittedText(TEXT, start.x(), start.y(), text.heightMm(), text.upwards() ? UPWARDS : 0, width, text.text());
    }

    private Layer layer(Pen pen, boolean isBar) {
        return isBar ? CHECK_BAR : layers.get(pen);
    }

    private static List<Vertex> vertices(List<Point> points) {
        return points.stream().map(point -> new Vertex(point.x(), point.y())).toList();
    }
}
