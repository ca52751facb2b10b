// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import pitchstack.model.Axis;
import pitchstack.model.Stage;

/**
 * Puts a stage on an axis. Shift limits go on naming the stages they named; a stage put in between counts with them.
 *
 * @param axis the axis
 * @param position where it goes, the lowest at 0
 * @param stage the new stage
 */
record AddStage(Axis axis, int position, Stage stage) implements Edit {
    @Override
    public String label() {
        return "Add stage “" + stage.getName() + "”";
    }

    @Override
    public void apply() {
        axis.getStages().add(position, stage);
        LimitNumbers.makeRoom(axis, position);
        MeasuredSettings.makeRoom(axis, position);
    }
}
