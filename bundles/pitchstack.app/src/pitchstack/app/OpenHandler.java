// SPDX-License-Identifier: EPL-2.0
package pitchstack.app;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;

/** File &gt; Open File: asks for positioner files and opens them; greyed while no editor is installed. */
public final class OpenHandler extends AbstractHandler {

    @Override
    public boolean isEnabled() {
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        return window != null && FileOpening.isAvailable(window);
    }

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        FileOpening.open(window, ask(window));
        return null;
    }

    /** Gives the chosen files, none if the dialog is cancelled. */
    private static List<Path> ask(IWorkbenchWindow window) {
        FileDialog dialog = new FileDialog(window.getShell(), SWT.OPEN | SWT.MULTI);
        dialog.setText("Open File");
        dialog.setFilterNames(new String[] {"Positioners (*.pitchstack)", "All files"});
        dialog.setFilterExtensions(new String[] {"*.pitchstack", "*"});
        if (dialog.open() == null) {
            return List.of();
        }
        Path folder = Path.of(dialog.getFilterPath());
        return Arrays.stream(dialog.getFileNames()).map(folder::resolve).toList();
    }
}
