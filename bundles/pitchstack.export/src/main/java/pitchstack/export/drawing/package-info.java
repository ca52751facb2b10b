// SPDX-License-Identifier: EPL-2.0
/**
 * The fixture drawing: what is drawn is a list of marks on a sheet, and each file format writes the same list. All places are
 * millimetres from the lower left corner of the trimmed sheet, x to the right and y up; angles are degrees, anticlockwise.
 */
package pitchstack.export.drawing;
