// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import java.util.Optional;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import pitchstack.core.units.Scale;
import pitchstack.edit.Session;
import pitchstack.edit.TypedText;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Target;

/** Asks under which name a typed target is kept. */
final class TargetNaming {
    private final Session session;

    TargetNaming(Session session) {
        this.session = session;
    }

    /**
     * Asks for a name and makes a target of what is typed.
     *
     * @param shell the window to ask in
     * @param question what is typed, readable on the axis
     * @return empty if the person thinks better of it
     */
    Optional<Target> ask(Shell shell, Question question) {
        Scale scale = session.analysis().spec().scale();
        String position = TypedText.withUnit(question.target(), scale);
        InputDialog dialog = new InputDialog(shell, "Save Target",
                "Name under which " + position + " is kept in the file:", position, TargetNaming::problem);
        if (dialog.open() != Window.OK) {
            return Optional.empty();
        }
        Target target = PitchstackFactory.eINSTANCE.createTarget();
        target.setName(dialog.getValue().strip());
        target.setPosition(position);
        if (!question.tolerance().isBlank()) {
            target.setTolerance(TypedText.withUnit(question.tolerance(), scale));
        }
        return Optional.of(target);
    }

    private static String problem(String name) {
        return name.isBlank() ? "Give the target a name." : null;
    }
}
