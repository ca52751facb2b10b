// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.stack;

/**
 * Teeth of a row that are marked.
 *
 * @param teeth which teeth of the row, counted from 0
 * @param wear what they are fit for
 */
public record WornRange(ToothSpan teeth, Wear wear) { }
