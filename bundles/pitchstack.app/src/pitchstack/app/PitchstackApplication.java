// SPDX-License-Identifier: EPL-2.0
package pitchstack.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.service.datalocation.Location;
import org.eclipse.swt.SWTError;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import pitchstack.ui.views.preferences.ShopSettings;
import pitchstack.ui.views.preferences.WindowColours;

/**
 * The program with a window. All arguments after {@value #OPEN} are names of files to open once the window stands;
 * relative names count from the working directory.
 */
public final class PitchstackApplication implements IApplication {

    /** What the windowing system and the title bar call the program. */
    static final String NAME = "Pitchstack";
    /** Files follow it; what comes before belongs to the platform. */
    static final String OPEN = "-open";
    /** The exit code of the start scripts when something that the program needs is missing. */
    private static final Integer NO_DISPLAY = 3;

    @Override
    public Object start(IApplicationContext context) throws IOException {
        // Charts are painted into memory; nothing else of that toolkit may open a window or a connection beside ours.
        System.setProperty("java.awt.headless", "true");
        WindowColours.prepare(ShopSettings.get().theme());
        Display display = openDisplay();
        if (display == null) {
            return NO_DISPLAY;
        }
        WindowColours.opened(display, ShopSettings.get().theme());
        Location settings = Platform.getInstanceLocation();
        try {
            if (!lock(settings)) {
                MessageDialog.openInformation(null, NAME, alreadyOpen(settings));
                return EXIT_OK;
            }
            PlainWords.use();
            int code = PlatformUI.createAndRunWorkbench(display, new PitchstackWorkbenchAdvisor(files(context)));
            return code == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
        } finally {
            if (settings != null) {
                settings.release();
            }
            display.dispose();
        }
    }

    @Override
    public void stop() {
        if (!PlatformUI.isWorkbenchRunning()) {
            return;
        }
        Display display = PlatformUI.getWorkbench().getDisplay();
        display.syncExec(() -> {
            if (!display.isDisposed()) {
                PlatformUI.getWorkbench().close();
            }
        });
    }

    /** Gives null, having said why on the error stream, if the windowing system turns the program away. */
    private static Display openDisplay() {
        Display.setAppName(NAME);
        try {
            return PlatformUI.createDisplay();
        } catch (SWTError e) {
            System.err.println("pitchstack: no window can be opened on this display: " + e.getMessage());
            return null;
        }
    }

    /** Two running programs would overwrite each other's window layout, so the folder that keeps it has one user. */
    private static boolean lock(Location settings) throws IOException {
        return settings == null || settings.getURL() == null || settings.lock();
    }

    private static String alreadyOpen(Location settings) {
        return "Pitchstack is already open and keeps its settings in " + settings.getURL().getPath()
                + ".\n\nOpen the file there with File > Open File, or start a second window with its own settings:"
                + " pitchstack --window --data FOLDER";
    }

    private static List<Path> files(IApplicationContext context) {
        String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        return Arrays.stream(arguments)
                .dropWhile(argument -> !OPEN.equals(argument))
                .skip(1)
                .map(argument -> Path.of(argument).toAbsolutePath().normalize())
                .toList();
    }
}
