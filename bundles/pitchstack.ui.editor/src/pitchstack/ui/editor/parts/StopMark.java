// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import pitchstack.edit.Edit;
import pitchstack.edit.RemoveStop;
import pitchstack.model.Axis;

/**
 * A stop of an axis, which is no element of its own in a file.
 *
 * @param axis the axis that has it
 * @param high whether it is at the high end
 */
public record StopMark(Axis axis, boolean high) {
    /** What it is called. */
    public String called() {
        return high ? "high stop" : "low stop";
    }

    /** Takes it off the axis. */
    public Edit removal() {
        return new RemoveStop(axis, high);
    }
}
