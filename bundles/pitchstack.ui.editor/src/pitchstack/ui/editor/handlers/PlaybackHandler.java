// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;
import pitchstack.ui.editor.StackEditor;
import pitchstack.ui.editor.parts.Playback;

/** Shows the proposed move, or pauses it, or goes one step on, as the command says. */
public final class PlaybackHandler extends AbstractHandler {
    @Override
    public Object execute(ExecutionEvent event) {
        if (HandlerUtil.getActiveEditor(event) instanceof StackEditor editor) {
            Playback playback = editor.page().playback();
            if (event.getCommand().getId().equals("pitchstack.ui.editor.playStep")) {
                playback.step();
            } else {
                playback.toggle();
            }
        }
        return null;
    }
}
