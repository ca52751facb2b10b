// SPDX-License-Identifier: EPL-2.0
/**
 * Rows and other flat parts as solids: a side view, extruded across the face, with holes through it and marks engraved in
 * the face that lies uppermost in the printer. x runs along the row, y up its teeth, z across the face; all three from the
 * corner of the printer's bed. A solid is sent triangle by triangle, piece by piece, so that a long row takes no more
 * memory than a short one.
 */
package pitchstack.core.geometry.solid;
