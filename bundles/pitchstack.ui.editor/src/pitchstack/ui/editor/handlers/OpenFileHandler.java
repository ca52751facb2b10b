// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import java.nio.file.Path;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the file that the parameter {@value #PATH} names. */
public final class OpenFileHandler extends AbstractHandler {
    /** The parameter: a path in the notation of the system. */
    static final String PATH = "path";

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        new Opening(HandlerUtil.getActiveWorkbenchWindowChecked(event)).file(Path.of(event.getParameter(PATH)));
        return null;
    }
}
