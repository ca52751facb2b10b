// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import pitchstack.core.units.TrueMinus;
import pitchstack.model.LastMove;
import pitchstack.model.Stage;

/**
 * Moves one stage to an index, carrying all that rides on it, and notes which way it went.
 *
 * @param stage the stage
 * @param index the index it shall stand at
 */
public record MoveStage(Stage stage, int index) implements Edit {
    @Override
    public String label() {
        return "Move “" + stage.getName() + "” to " + TrueMinus.in("" + index);
    }

    @Override
    public void apply() {
        if (index != stage.getIndex()) {
            stage.setLastMove(index > stage.getIndex() ? LastMove.FORWARD : LastMove.BACK);
        }
        stage.setIndex(index);
    }
}
