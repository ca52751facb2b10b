// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import pitchstack.core.stack.Setting;
import pitchstack.core.units.TrueMinus;
import pitchstack.model.Axis;
import pitchstack.model.LastMove;
import pitchstack.model.Stage;

/**
 * Moves every stage of an axis to a setting as a plan would, and notes which way each went last: where the axis asks for
 * an approach, that way.
 *
 * @param axis the axis
 * @param setting one index a stage
 */
public record ApplySetting(Axis axis, Setting setting) implements Edit {
    /** Refuses a setting of another number of stages. */
    public ApplySetting {
        if (setting.size() != axis.getStages().size()) {
            throw new IllegalArgumentException("A setting of " + setting.size() + " indices does not fit "
                    + axis.getStages().size() + " stages");
        }
    }

    @Override
    public String label() {
        return "Set “" + axis.getName() + "” to " + TrueMinus.in(setting.toString());
    }

    @Override
    public void apply() {
        for (int j = 0; j < setting.size(); j++) {
            Stage stage = axis.getStages().get(j);
            if (stage.getIndex() != setting.index(j)) {
                new MoveStage(stage, setting.index(j)).apply();
                switch (axis.getApproach()) {
                    case EITHER -> { }
                    case FORWARD -> stage.setLastMove(LastMove.FORWARD);
                    case BACK -> stage.setLastMove(LastMove.BACK);
                }
            }
        }
    }
}
