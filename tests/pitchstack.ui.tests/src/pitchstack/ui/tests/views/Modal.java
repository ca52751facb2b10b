// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.Consumer;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;

/** A dialog that holds up whoever opened it, filled in by a person meanwhile. */
final class Modal {
    private static final int EVERY_MS = 100;
    private static final int TRIES = 60;

    private final Hands hands;
    private Throwable fault;
    private boolean seen;

    Modal(Hands hands) {
        this.hands = hands;
    }

    /**
     * Does something that opens a dialog and returns when it is closed.
     *
     * @param title how the dialog's title begins
     * @param fill what the person does; if the dialog is open afterwards it is closed
     */
    void during(String title, Runnable opening, Consumer<Shell> fill) {
        watch(title, fill, TRIES);
        opening.run();
        if (fault instanceof Error error) {
            throw error;
        }
        if (fault != null) {
            throw new AssertionError(fault);
        }
        assertTrue(seen, "no dialog “" + title + "”");
    }

    private void watch(String title, Consumer<Shell> fill, int tries) {
        Display.getCurrent().timerExec(EVERY_MS, () -> {
            for (Shell shell : Display.getCurrent().getShells()) {
                if (shell.isVisible() && shell.getText().startsWith(title)) {
                    seen = true;
                    run(shell, fill);
                    return;
                }
            }
            if (tries > 0) {
                watch(title, fill, tries - 1);
            }
        });
    }

    private void run(Shell shell, Consumer<Shell> fill) {
        try {
            hands.settle();
            fill.accept(shell);
        } catch (RuntimeException | Error e) {
            fault = e;
            hands.picture(shell, "fault");
        }
        if (!shell.isDisposed()) {
            shell.close();
        }
    }
}
