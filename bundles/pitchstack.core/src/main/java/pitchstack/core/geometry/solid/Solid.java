// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

/** A solid with a closed surface of triangles: every edge belongs to two, which run along it in opposite directions. */
public interface Solid {
    /** What people call it. */
    String name();

    /** Sends the surface, or as much as is wanted; the same corners and triangles in the same order every time. */
    void send(TriangleSink sink);

    /** How far it reaches. */
    Extent extent();

    /** The volume in cubic millimetres by a closed form, arcs and all. */
    double volumeMm3();
}
