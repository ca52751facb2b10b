// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry;

/**
 * A point in the plane.
 *
 * @param x millimetres along the row
 * @param y millimetres above the reference line
 */
public record Point(double x, double y) { }
