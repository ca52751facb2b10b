// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

/**
 * How far a solid reaches from the corner of its bed, which it touches.
 *
 * @param xMm along the row
 * @param yMm up the teeth
 * @param zMm across the face
 */
public record Extent(double xMm, double yMm, double zMm) { }
