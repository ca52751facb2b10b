// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.axes;

import java.util.List;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.expressions.IEvaluationContext;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.ISources;
import org.eclipse.ui.handlers.HandlerUtil;
import pitchstack.edit.Session;
import pitchstack.model.Axis;

/** Next axis and axis before, for the document in front; greyed where it has only one. */
public final class AxisSteps extends AbstractHandler {
    private static final String PREVIOUS = "pitchstack.ui.views.previousAxis";

    @Override
    public void setEnabled(Object context) {
        Object editor = context instanceof IEvaluationContext variables ? variables.getVariable(ISources.ACTIVE_EDITOR_NAME) : null;
        Session session = editor instanceof IEditorPart part ? part.getAdapter(Session.class) : null;
        setBaseEnabled(session != null && session.positioner().getAxes().size() > 1);
    }

    @Override
    public Object execute(ExecutionEvent event) {
        IEditorPart editor = HandlerUtil.getActiveEditor(event);
        Session session = editor == null ? null : editor.getAdapter(Session.class);
        if (session != null) {
            look(session, event.getCommand().getId().equals(PREVIOUS) ? -1 : 1);
        }
        return null;
    }

    /** Looks at an axis further on, from the last again at the first. */
    static void look(Session session, int steps) {
        List<Axis> axes = session.positioner().getAxes();
        session.look(axes.get(Math.floorMod(axes.indexOf(session.axis()) + steps, axes.size())));
    }

    /** The name of the axis that is looked at, in quotes. */
    static String title(Session session) {
        String name = session.axis().getName();
        return name == null || name.isBlank() ? "without a name" : "“" + name + "”";
    }
}
