// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import pitchstack.model.Axis;

/**
 * The place that positions of an axis are counted from, which is no element of its own in a file.
 *
 * @param axis the axis that has it
 */
record ZeroMark(Axis axis) { }
