// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** File &gt; New Small Stack: a rack and a pair to change, in no file yet. */
public final class NewHandler extends AbstractHandler {
    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        new Opening(HandlerUtil.getActiveWorkbenchWindowChecked(event)).untitled();
        return null;
    }
}
