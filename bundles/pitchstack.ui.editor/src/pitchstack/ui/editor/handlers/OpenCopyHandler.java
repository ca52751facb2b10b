// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import java.nio.file.Path;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens a copy of the file that the parameter {@value OpenFileHandler#PATH} names; the file itself is never written. */
public final class OpenCopyHandler extends AbstractHandler {
    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        new Opening(HandlerUtil.getActiveWorkbenchWindowChecked(event))
                .copy(Path.of(event.getParameter(OpenFileHandler.PATH)));
        return null;
    }
}
