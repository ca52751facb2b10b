// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

/** Takes the surface of a solid. */
public interface TriangleSink {
    /** A corner, before the first triangle that has it. */
    void node(Node node);

    /** A triangle, its corners anticlockwise as seen from outside. */
    void triangle(Node a, Node b, Node c);

    /**
     * Asked before every piece of a long solid: whether the rest of it is wanted. What was sent is no closed surface where it
     * is not.
     *
     * @param share how much of the solid is sent, from 0 to 1
     */
    default boolean goesOn(double share) {
        return true;
    }
}
