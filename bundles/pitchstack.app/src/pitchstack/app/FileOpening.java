// SPDX-License-Identifier: EPL-2.0
package pitchstack.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.statushandlers.StatusManager;

/**
 * Opens files without knowing the editor. The bundle that has the editor defines a command with the id
 * {@value #COMMAND} and one parameter, {@value #PATH}: the absolute path of the file. Its handler opens the file in the
 * active window, brings an editor that already shows it to the front, and reports a file it cannot read itself.
 */
final class FileOpening {

    /** Id of the command that the editor's bundle defines. */
    static final String COMMAND = "pitchstack.ui.editor.openFile";
    /** Name of its parameter, an absolute path in the notation of the operating system. */
    static final String PATH = "path";

    private FileOpening() {
    }

    /** Tells whether an editor is installed, that is, whether {@link #open} can do anything. */
    static boolean isAvailable(IWorkbenchWindow window) {
        return command(window).isDefined();
    }

    /** Opens each file in turn; one that fails is reported in a dialog and does not keep the others back. */
    static void open(IWorkbenchWindow window, List<Path> files) {
        for (Path file : files) {
            ParameterizedCommand open = ParameterizedCommand.generateCommand(command(window),
                    Map.of(PATH, file.toString()));
            if (open == null) {
                report(file, "no editor is installed.", null);
                return;
            }
            try {
                window.getService(IHandlerService.class).executeCommand(open, null);
            } catch (CommandException e) {
                report(file, e.getMessage(), e);
            }
        }
    }

    private static Command command(IWorkbenchWindow window) {
        return window.getService(ICommandService.class).getCommand(COMMAND);
    }

    private static void report(Path file, String reason, CommandException cause) {
        IStatus status = new Status(IStatus.ERROR, FileOpening.class, file + " could not be opened: " + reason, cause);
        StatusManager.getManager().handle(status, StatusManager.LOG | StatusManager.SHOW);
    }
}
