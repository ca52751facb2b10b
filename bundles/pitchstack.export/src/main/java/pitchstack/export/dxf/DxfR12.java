// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.dxf;

import java.util.List;

/**
 * A DXF drawing of Release 12 (AC1009). It has no unit of its own, so the file says in a comment that it is in
 * millimetres. y goes up; angles are degrees, anticlockwise from x. The text is ASCII with CR LF, the same on every run.
 */
public final class DxfR12 {
    private static final int ONE_PATTERN = 'A';
    private static final int FITTED = 5;

    private final List<String> comments;
    private final List<Layer> layers;
    private final Pairs entities = new Pairs();
    private double lowX = Double.POSITIVE_INFINITY;
    private double lowY = Double.POSITIVE_INFINITY;
    private double highX = Double.NEGATIVE_INFINITY;
    private double highY = Double.NEGATIVE_INFINITY;

    /**
     * An empty drawing.
     *
     * @param comments what stands at the head of the file after the unit
     * @param layers all its layers
     */
    public DxfR12(List<String> comments, List<Layer> layers) {
        this.comments = List.copyOf(comments);
        this.layers = List.copyOf(layers);
    }

    /** A straight line. */
    public void line(Layer layer, double x1, double y1, double x2, double y2) {
        begin("LINE", layer).point(0, x1, y1).point(1, x2, y2);
        cover(x1, y1, 0);
        cover(x2, y2, 0);
    }

    /**
     * Straight lines and arcs from corner to corner.
     *
     * @param closed whether the last corner goes on to the first
     */
    public void polyline(Layer layer, List<Vertex> vertices, boolean closed) {
        // Its own position means nothing, but Release 12 wants one.
        begin("POLYLINE", layer).pair(66, 1).point(0, 0, 0).pair(70, closed ? 1 : 0);
        for (Vertex vertex : vertices) {
            Pairs pairs = begin("VERTEX", layer).point(0, vertex.x(), vertex.y());
            if (vertex.bulge() != 0) {
                pairs.pair(42, vertex.bulge());
            }
            cover(vertex.x(), vertex.y(), 0);
        }
        begin("SEQEND", layer);
    }

    /** An arc, anticlockwise from the first angle to the second. */
    public void arc(Layer layer, double x, double y, double radius, double fromDeg, double toDeg) {
        begin("ARC", layer).point(0, x, y).pair(40, radius).pair(50, fromDeg).pair(51, toDeg);
        cover(x, y, radius);
    }

    /** A full circle. */
    public void circle(Layer layer, double x, double y, double radius) {
        begin("CIRCLE", layer).point(0, x, y).pair(40, radius);
        cover(x, y, radius);
    }

    /**
     * A line of text.
     *
     * @param height of its capitals, millimetres
     * @param turnDeg how far it is turned
     */
    public void text(Layer layer, double x, double y, double height, double turnDeg, Anchor anchor, String text) {
        Pairs pairs = begin("TEXT", layer).point(0, x, y).pair(40, height).pair(1, DxfText.of(text)).pair(50, turnDeg);
        if (anchor != Anchor.LEFT) {
            pairs.pair(72, anchor.ordinal()).point(1, x, y);
        }
        cover(x, y, 0);
    }

    /**
     * A line of text that is as long as given, whatever letters it is shown with.
     *
     * @param height of its capitals, millimetres
     * @param turnDeg how far it is turned
     * @param length from its start to its end
     */
    public void fittedText(Layer layer, double x, double y, double height, double turnDeg, double length, String text) {
        double endX = x + length * Math.cos(Math.toRadians(turnDeg));
        double endY = y + length * Math.sin(Math.toRadians(turnDeg));
        begin("TEXT", layer).point(0, x, y).pair(40, height).pair(1, DxfText.of(text)).pair(50, turnDeg).pair(72, FITTED)
                .point(1, endX, endY);
        cover(x, y, 0);
        cover(endX, endY, 0);
    }

    /**
     * A filled area.
     *
     * @param corners three or four, in order
     */
    public void solid(Layer layer, List<Vertex> corners) {
        if (corners.size() != 3 && corners.size() != 4) {
            throw new IllegalArgumentException("A solid has three or four corners, not " + corners.size());
        }
        Vertex last = corners.get(corners.size() - 1);
        // Release 12 wants the corners of a solid crosswise: the last two are changed over.
        List<Vertex> crosswise = List.of(corners.get(0), corners.get(1), last, corners.get(2));
        Pairs pairs = begin("SOLID", layer);
        for (int i = 0; i < crosswise.size(); i++) {
            pairs.point(i, crosswise.get(i).x(), crosswise.get(i).y());
            cover(crosswise.get(i).x(), crosswise.get(i).y(), 0);
        }
    }

    private Pairs begin(String entity, Layer layer) {
        if (!layers.contains(layer)) {
            throw new IllegalArgumentException("The drawing has no layer " + layer.name());
        }
        return entities.pair(0, entity).pair(8, layer.name());
    }

    private void cover(double x, double y, double around) {
        lowX = Math.min(lowX, x - around);
        lowY = Math.min(lowY, y - around);
        highX = Math.max(highX, x + around);
        highY = Math.max(highY, y + around);
    }

    /** The whole file. */
    public String text() {
        Pairs file = new Pairs().pair(999, "All lengths are millimetres");
        comments.forEach(comment -> file.pair(999, DxfText.of(comment)));
        header(file);
        file.section("TABLES");
        lineTypes(file);
        layers(file);
        style(file);
        file.pair(0, "ENDSEC").section("BLOCKS").pair(0, "ENDSEC");
        return file.section("ENTITIES").all(entities).pair(0, "ENDSEC").pair(0, "EOF").toString();
    }

    private void header(Pairs file) {
        file.section("HEADER").pair(9, "$ACADVER").pair(1, "AC1009");
        if (lowX <= highX) {
            file.pair(9, "$EXTMIN").point(0, lowX, lowY).pair(9, "$EXTMAX").point(0, highX, highY);
        }
        file.pair(0, "ENDSEC");
    }

    private static void lineTypes(Pairs file) {
        file.table("LTYPE", LineType.values().length);
        for (LineType type : LineType.values()) {
            List<Double> dashes = type.dashesMm();
            file.pair(0, "LTYPE").pair(2, type.name()).pair(70, 0).pair(3, type.looks()).pair(72, ONE_PATTERN)
                    .pair(73, dashes.size()).pair(40, dashes.stream().mapToDouble(Math::abs).sum());
            dashes.forEach(dash -> file.pair(49, dash));
        }
        file.pair(0, "ENDTAB");
    }

    private void layers(Pairs file) {
        file.table("LAYER", layers.size());
        layers.forEach(layer -> file.pair(0, "LAYER").pair(2, layer.name()).pair(70, 0).pair(62, layer.colour())
                .pair(6, layer.lineType().name()));
        file.pair(0, "ENDTAB");
    }

    private static void style(Pairs file) {
        file.table("STYLE", 1).pair(0, "STYLE").pair(2, "STANDARD").pair(70, 0).pair(40, 0.0).pair(41, 1.0).pair(50, 0.0)
                .pair(71, 0).pair(42, 1.0).pair(3, "txt").pair(4, "").pair(0, "ENDTAB");
    }
}
