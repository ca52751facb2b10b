// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.List;
import java.util.stream.Collectors;
import pitchstack.export.Decimals;
import pitchstack.export.XmlText;

/** Writes a drawing as SVG in which one unit is one millimetre. y is turned over: SVG counts it from the top. */
public final class SvgDrawing {
    /** A tenth of a micrometre on paper. */
    private static final int DECIMALS = 4;

    private final Drawing drawing;
    private final LiberationSans letters;
    private final StringBuilder svg = new StringBuilder();

    private SvgDrawing(Drawing drawing, LiberationSans letters) {
        this.drawing = drawing;
        this.letters = letters;
    }

    /** The text of the file. */
    public static String of(Drawing drawing, LiberationSans letters) {
        return new SvgDrawing(drawing, letters).write();
    }

    private String write() {
        String width = number(drawing.sheet().widthMm());
        String height = number(drawing.sheet().heightMm());
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").append(width).append("mm\" height=\"")
                .append(height).append("mm\" viewBox=\"0 0 ").append(width).append(' ').append(height)
                .append("\" font-family=\"").append(LiberationSans.FAMILIES).append("\" fill=\"none\" stroke=\"#000\">\n");
        svg.append("<title>").append(XmlText.of(drawing.title())).append("</title>\n");
        svg.append("<desc>1 unit = 1 mm; ").append(drawing.sheet()).append(", ").append(drawing.date()).append("</desc>\n");
        svg.append("<rect width=\"").append(width).append("\" height=\"").append(height)
                .append("\" fill=\"#fff\" stroke=\"none\"/>\n");
        for (Part part : drawing.parts()) {
            svg.append("<g id=\"").append(part.name()).append("\">\n");
            part.marks().forEach(this::mark);
            svg.append("</g>\n");
        }
        return svg.append("</svg>\n").toString();
    }

    private void mark(Mark mark) {
        if (mark instanceof Mark.Line line) {
            svg.append("<path d=\"M").append(place(line.from())).append('L').append(place(line.to())).append('"');
            pen(line.pen());
        } else if (mark instanceof Mark.Path path) {
            svg.append("<path d=\"M").append(places(path.points(), "L")).append(path.closed() ? "Z\"" : "\"");
            pen(path.pen());
        } else if (mark instanceof Mark.Area area) {
            svg.append("<path d=\"M").append(places(area.corners(), "L")).append("Z\" fill=\"#000\" stroke=\"none\"/>\n");
        } else if (mark instanceof Mark.Circle circle) {
            svg.append("<circle cx=\"").append(number(circle.centre().x())).append("\" cy=\"")
                    .append(number(down(circle.centre().y()))).append("\" r=\"").append(number(circle.radius())).append('"');
            pen(circle.pen());
        } else if (mark instanceof Mark.Arc arc) {
            arc(arc);
        } else {
            text((Mark.Text) mark);
        }
    }

    private void arc(Mark.Arc arc) {
        String radius = number(arc.radius());
        String isLarge = arc.toDeg() - arc.fromDeg() > 180 ? "1" : "0";
        svg.append("<path d=\"M").append(place(Extents.on(arc, arc.fromDeg()))).append('A').append(radius).append(' ')
                .append(radius).append(" 0 ").append(isLarge).append(" 0 ").append(place(Extents.on(arc, arc.toDeg())))
                .append('"');
        pen(arc.pen());
    }

    /** The length is given too, so that other letters than those measured keep to their place. */
    private void text(Mark.Text text) {
        svg.append("<text x=\"").append(number(text.at().x())).append("\" y=\"").append(number(down(text.at().y())))
                .append("\" font-size=\"").append(number(letters.em(text.heightMm()))).append("\" textLength=\"")
                .append(number(letters.widthMm(text.text(), text.heightMm()))).append("\" lengthAdjust=\"spacingAndGlyphs\"");
        if (text.anchor() != Anchor.START) {
            svg.append(" text-anchor=\"").append(text.anchor() == Anchor.END ? "end" : "middle").append('"');
        }
        if (text.upwards()) {
            svg.append(" transform=\"rotate(-90 ").append(place(text.at())).append(")\"");
        }
        svg.append(" fill=\"#000\" stroke=\"none\">").append(XmlText.of(text.text())).append("</text>\n");
    }

    private void pen(Pen pen) {
        svg.append(" stroke-width=\"").append(number(pen.widthMm())).append('"');
        if (!pen.dashesMm().isEmpty()) {
            svg.append(" stroke-dasharray=\"").append(pen.dashesMm().stream().map(SvgDrawing::number)
                    .collect(Collectors.joining(" "))).append('"');
        }
        svg.append("/>\n");
    }

    private String places(List<Point> points, String between) {
        return points.stream().map(this::place).collect(Collectors.joining(between));
    }

    private String place(Point point) {
        return number(point.x()) + ' ' + number(down(point.y()));
    }

    private double down(double y) {
        return drawing.sheet().heightMm() - y;
    }

    private static String number(double value) {
        return Decimals.of(value, DECIMALS);
    }
}
