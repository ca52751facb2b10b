// SPDX-License-Identifier: EPL-2.0
/**
 * Teeth and rows as shapes in the plane. Lengths are millimetres in {@code double}, since that is what drawings and
 * printers take; the place of tooth i is computed from the whole femtometres of i·p and only then made a {@code double},
 * so that nothing adds up along a row. x runs along the row towards higher teeth; y is the height above the reference
 * line, on which tooth and gap are equally wide; outlines run anticlockwise round the material.
 */
package pitchstack.core.geometry;
