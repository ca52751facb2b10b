// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.dxf;

/**
 * A corner of a polyline.
 *
 * @param x millimetres
 * @param y millimetres, upwards
 * @param bulge the way to the next corner: 0 straight, else the tangent of a quarter of the angle of the arc, above 0 where
 *     it turns anticlockwise
 */
public record Vertex(double x, double y, double bulge) {
    /** A corner from which it goes on straight. */
    public Vertex(double x, double y) {
        this(x, y, 0);
    }
}
