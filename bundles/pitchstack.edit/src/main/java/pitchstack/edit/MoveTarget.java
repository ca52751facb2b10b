// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;
import pitchstack.model.Target;

/**
 * Wants the carriage elsewhere for a target.
 *
 * @param target the target
 * @param scale the scale of its axis
 * @param position the new position, a count of the scale
 */
public record MoveTarget(Target target, Scale scale, long position) implements Edit {
    @Override
    public String label() {
        return "Move target " + (target.getName() == null ? "" : "“" + target.getName() + "” ") + "to "
                + TrueMinus.in(scale.format(position));
    }

    @Override
    public void apply() {
        target.setPosition(TypedText.of(scale, position));
    }
}
