// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;
import pitchstack.ui.editor.StackEditor;
import pitchstack.ui.editor.parts.SideView;

/** Zooms the active drawing in or out, or fits it, as the command says. */
public final class ZoomHandler extends AbstractHandler {
    @Override
    public Object execute(ExecutionEvent event) {
        if (HandlerUtil.getActiveEditor(event) instanceof StackEditor editor) {
            SideView view = editor.page().view();
            switch (event.getCommand().getId()) {
                case "pitchstack.ui.editor.zoomIn" -> view.zoom(SideView.ZOOM_STEP);
                case "pitchstack.ui.editor.zoomOut" -> view.zoom(1 / SideView.ZOOM_STEP);
                default -> view.fit();
            }
        }
        return null;
    }
}
