// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.program;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.Platform;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/** The program as it is, with somebody inside who follows a {@link Script} once the window stands, and says what he saw. */
public final class Driven implements IApplication {
    /** The id it is started by. */
    static final String ID = "pitchstack.ui.tests.driven";
    /** The property with the name of the script. */
    static final String SCRIPT = "driven.script";
    /** The property with the file that what was seen is written to. */
    static final String SAYS = "driven.says";
    private static final int EVERY_MS = 100;

    @Override
    public Object start(IApplicationContext context) throws Exception {
        Thread waiting = new Thread(Driven::begin, "waits for the window");
        waiting.setDaemon(true);
        waiting.start();
        IConfigurationElement program = Platform.getExtensionRegistry()
                .getExtension("org.eclipse.core.runtime.applications", "pitchstack.app.application")
                .getConfigurationElements()[0];
        return ((IApplication) program.createExecutableExtension("run")).start(context);
    }

    @Override
    public void stop() {
        PlatformUI.getWorkbench().close();
    }

    private static void begin() {
        while (!PlatformUI.isWorkbenchRunning()) {
            try {
                Thread.sleep(EVERY_MS);
            } catch (InterruptedException e) {
                return;
            }
        }
        PlatformUI.getWorkbench().getDisplay().asyncExec(Script.valueOf(System.getProperty(SCRIPT))::begin);
    }

    /** Does something as soon as something is so; also while a dialog is open. */
    static void once(BooleanSupplier so, Runnable then) {
        Display.getCurrent().timerExec(EVERY_MS, () -> {
            if (so.getAsBoolean()) {
                then.run();
            } else {
                once(so, then);
            }
        });
    }

    /** Says what was seen; whole at once, so that nobody reads half of it. */
    static void say(String what) {
        Path says = Path.of(System.getProperty(SAYS));
        Path half = says.resolveSibling(says.getFileName() + ".half");
        try {
            Files.writeString(half, what);
            Files.move(half, says);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
