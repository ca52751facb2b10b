// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import java.util.Map;
import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.services.IServiceLocator;
import org.eclipse.ui.statushandlers.StatusManager;

/** Runs what other bundles offer, known here by the ids of their commands only. */
public final class Commands {
    /** Opens a copy of the file named by {@link #PATH} as a document without a file of its own. */
    public static final String OPEN_COPY = "pitchstack.ui.editor.openCopy";
    /** Opens the file named by {@link #PATH}, or brings its editor to the front. */
    public static final String OPEN_FILE = "pitchstack.ui.editor.openFile";
    /** Asks what is known, and begins a file. */
    public static final String DESIGN = "pitchstack.ui.views.design";
    /** Shows the first tour. */
    public static final String TOUR = "pitchstack.ui.views.showTour";
    /** Opens a new stack. */
    public static final String NEW = "pitchstack.ui.editor.new";
    /** Asks for files and opens them. */
    public static final String ASK_AND_OPEN = "pitchstack.app.open";
    /** Shows the user guide. */
    public static final String GUIDE = "pitchstack.ui.views.showGuide";
    /** The parameter that names a file, absolute and in the notation of the operating system. */
    public static final String PATH = "path";

    private final IServiceLocator services;

    /** @param services a window, or the site of a part in it */
    public Commands(IServiceLocator services) {
        this.services = services;
    }

    /** Whether a bundle that defines the command is installed. */
    public boolean offers(String id) {
        return command(id).isDefined();
    }

    /**
     * Runs a command; a failure is shown in a dialog.
     *
     * @param id a command that is offered
     * @param parameters its parameters
     */
    public void run(String id, Map<String, String> parameters) {
        try {
            ParameterizedCommand call = ParameterizedCommand.generateCommand(command(id), parameters);
            services.getService(IHandlerService.class).executeCommand(call, null);
        } catch (CommandException e) {
            StatusManager.getManager().handle(
                    new Status(IStatus.ERROR, Commands.class, "This could not be done: " + e.getMessage(), e),
                    StatusManager.LOG | StatusManager.SHOW);
        }
    }

    private Command command(String id) {
        return services.getService(ICommandService.class).getCommand(id);
    }
}
