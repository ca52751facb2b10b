// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import pitchstack.model.Stage;

/**
 * Moves one stage to an index, carrying all that rides on it.
 *
 * @param stage the stage
 * @param index the index it shall stand at
 */
public record MoveStage(Stage stage, int index) implements Edit {
    @Override
    public String label() {
        return "Move “" + stage.getName() + "” to " + index;
    }

    @Override
    public void apply() {
        stage.setIndex(index);
    }
}
