// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

/** Takes the surface of a solid. */
public interface TriangleSink {
    /** A corner, before the first triangle that has it. */
    void node(Node node);

    /** A triangle, its corners anticlockwise as seen from outside. */
    void triangle(Node a, Node b, Node c);
}
