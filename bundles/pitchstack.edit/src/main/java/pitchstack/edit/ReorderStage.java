// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import pitchstack.model.Axis;
import pitchstack.model.Stage;

/**
 * Puts a stage at another place of its stack. A shift limit over this stage alone goes along with it; others go on naming
 * the stages they named, and count it where it comes to stand between them. Measured settings are reordered with it.
 *
 * @param stage a stage of an axis
 * @param position its new place, the lowest at 0, counted without it; at most the number of the other stages
 */
public record ReorderStage(Stage stage, int position) implements Edit {
    /** Refuses a place that the stack does not have. */
    public ReorderStage {
        if (position < 0 || position >= ((Axis) stage.eContainer()).getStages().size()) {
            throw new IllegalArgumentException("No place " + position);
        }
    }

    @Override
    public String label() {
        Axis axis = (Axis) stage.eContainer();
        boolean up = axis != null && position > axis.getStages().indexOf(stage);
        return "Move stage “" + stage.getName() + "” " + (up ? "up" : "down");
    }

    @Override
    public void apply() {
        Axis axis = (Axis) stage.eContainer();
        int from = axis.getStages().indexOf(stage);
        if (from != position) {
            axis.getStages().move(position, stage);
            LimitNumbers.move(axis, from, position);
            MeasuredSettings.move(axis, from, position);
        }
    }
}
