// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.pictures;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.ui.handlers.HandlerUtil;
import pitchstack.ui.editor.StackEditor;

/** File &gt; Print: shows how the drawing stands on the page, and prints it. */
public final class PrintHandler extends AbstractHandler {
    @Override
    public Object execute(ExecutionEvent event) {
        if (HandlerUtil.getActiveEditor(event) instanceof StackEditor editor) {
            PrinterData printer = printer();
            if (printer == null) {
                MessageDialog.openInformation(HandlerUtil.getActiveShell(event), "Print", "No printer is set up on this"
                        + " computer. Set one up, or copy the drawing as a picture (Ctrl+Shift+C) and print it elsewhere.");
                return null;
            }
            PrintPreview preview = new PrintPreview(HandlerUtil.getActiveShell(event), editor.page(), printer);
            if (preview.open() == PrintPreview.OK) {
                new PrintedPage(preview.drawing(), editor.getTitle()).print(preview.printer());
            }
        }
        return null;
    }

    private static PrinterData printer() {
        PrinterData usual = Printer.getDefaultPrinterData();
        PrinterData[] all = Printer.getPrinterList();
        return usual != null ? usual : all.length > 0 ? all[0] : null;
    }
}
