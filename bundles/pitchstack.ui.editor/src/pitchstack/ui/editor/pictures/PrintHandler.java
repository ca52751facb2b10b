// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.pictures;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;
import pitchstack.ui.editor.StackEditor;

/** File &gt; Print: shows how the drawing stands on the page, and prints it. */
public final class PrintHandler extends AbstractHandler {
    /** What GTK calls its own printer that writes files. */
    private static final String FILE_PRINTER = "GtkPrintBackendFile";

    @Override
    public Object execute(ExecutionEvent event) {
        if (HandlerUtil.getActiveEditor(event) instanceof StackEditor editor) {
            PrinterData printer = printer();
            if (printer == null) {
                MessageDialog.openInformation(HandlerUtil.getActiveShell(event), "Print", "No printer is set up on this"
                        + " computer. Set one up, or copy the drawing as a picture (Ctrl+Shift+C) and print it elsewhere.");
                return null;
            }
            PrintPreview preview = new PrintPreview(HandlerUtil.getActiveShell(event), editor.page(), editor.getTitle(), printer);
            if (preview.open() == PrintPreview.OK) {
                print(editor, new PrintedPage(preview.drawing(), editor.getTitle()), preview.printer());
            }
        }
        return null;
    }

    private static PrinterData printer() {
        PrinterData usual = Printer.getDefaultPrinterData();
        PrinterData[] all = Printer.getPrinterList();
        return usual != null ? usual : all.length > 0 ? all[0] : null;
    }

    private static void print(StackEditor editor, PrintedPage page, PrinterData printer) {
        String done = "Printed on " + (printer.name == null ? "the usual printer" : printer.name) + ".";
        if (FILE_PRINTER.equals(printer.driver) || printer.printToFile) {
            Optional<Path> file = ask(editor.getSite().getShell(), editor.getTitle());
            if (file.isEmpty()) {
                return;
            }
            printer.printToFile = true;
            printer.fileName = file.get().toString();
            done = "Printed into " + file.get() + ".";
        }
        page.print(printer);
        editor.getEditorSite().getActionBars().getStatusLineManager().setMessage(done);
    }

    /** A printer that writes files: which one is to be asked, or the page would lie wherever the program was started. */
    private static Optional<Path> ask(Shell shell, String title) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText("Print into a File");
        dialog.setFileName(title.replaceFirst("\\.pitchstack$", "") + ".pdf");
        dialog.setFilterExtensions(new String[] {"*.pdf"});
        dialog.setOverwrite(true);
        Optional<Path> chosen = Optional.ofNullable(dialog.open()).map(Path::of);
        if (chosen.isPresent() && !Files.isWritable(chosen.get().toAbsolutePath().getParent())) {
            MessageDialog.openError(shell, "Print", "The folder of " + chosen.get() + " takes no files; choose another one.");
            return Optional.empty();
        }
        return chosen;
    }
}
