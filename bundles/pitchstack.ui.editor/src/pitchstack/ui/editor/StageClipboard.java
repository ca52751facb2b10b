// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Display;
import pitchstack.model.Stage;
import pitchstack.model.file.StackFileException;
import pitchstack.model.file.StagesText;

/** The system's clipboard, with stages on it as the text of a stack file. */
final class StageClipboard {
    private StageClipboard() {
    }

    static void put(Stage stage) throws StackFileException {
        String text = StagesText.write(List.of(stage));
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        try {
            clipboard.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
        } finally {
            clipboard.dispose();
        }
    }

    /** The text on the clipboard, if there is any. */
    static Optional<String> text() {
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        try {
            return Optional.ofNullable((String) clipboard.getContents(TextTransfer.getInstance()));
        } finally {
            clipboard.dispose();
        }
    }
}
