// SPDX-License-Identifier: EPL-2.0
/**
 * Where everything of an axis stands and which part of it is seen: plain numbers, without a window.
 *
 * <p>Two coordinates are used. A <em>place</em> is a {@code double} count of the scale of the axis, the same count as a
 * position, so that the reference of the carriage stands at the carriage's position. A <em>pixel</em> is a
 * {@code double} along the drawing, from its left end; it becomes a whole number only when painted. Every tooth is
 * placed from its own number, never by adding up the teeth before it.
 */
package pitchstack.ui.editor.places;
