// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.pictures;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.ui.handlers.HandlerUtil;
import pitchstack.ui.editor.StackEditor;

/** Edit &gt; Copy Drawing as Picture: what is seen of the drawing, in twice the pixels. */
public final class CopyPictureHandler extends AbstractHandler {
    @Override
    public Object execute(ExecutionEvent event) {
        if (HandlerUtil.getActiveEditor(event) instanceof StackEditor editor) {
            Clipboard clipboard = new Clipboard(editor.page().canvas().getDisplay());
            clipboard.setContents(new Object[] {Picture.seen(editor.page())},
                    new Transfer[] {ImageTransfer.getInstance()});
            clipboard.dispose();
            editor.getEditorSite().getActionBars().getStatusLineManager()
                    .setMessage("The drawing is on the clipboard as a picture, to be pasted into another program.");
        }
        return null;
    }
}
