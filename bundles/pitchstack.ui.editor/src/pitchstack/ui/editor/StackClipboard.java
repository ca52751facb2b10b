// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor;

import java.util.Optional;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Display;

/** The system's clipboard, with parts of a stack on it as text. */
final class StackClipboard {
    private StackClipboard() {
    }

    static void put(String text) {
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
