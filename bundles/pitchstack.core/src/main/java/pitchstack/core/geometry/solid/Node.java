// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

/**
 * A corner of triangles.
 *
 * @param index counted from 0 in the order in which the corners of a solid are sent
 * @param x millimetres
 * @param y millimetres
 * @param z millimetres
 */
public record Node(int index, double x, double y, double z) { }
