// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.Consumer;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;

/** A dialog that holds up whoever opened it, filled in by a person meanwhile. */
final class Modal {
    private static final int EVERY_MS = 100;
    private static final int TRIES = 300;

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
        expect(title, fill);
        opening.run();
        check(title);
    }

    /** Waits in the background for a dialog that opens soon, as {@link #during} does. */
    void expect(String title, Consumer<Shell> fill) {
        watch(title, fill, TRIES);
    }

    /** Fails if the dialog did not open, or what the person did in it failed. */
    void check(String title) {
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
            } else {
                closeOthers();
            }
        });
    }

    /** A dialog that nobody expected would hold up everything for ever. */
    private void closeOthers() {
        for (Shell shell : Display.getCurrent().getShells()) {
            if (shell.isVisible() && shell.getParent() != null) {
                fault = new AssertionError("a dialog nobody expected: “" + shell.getText() + "”");
                shell.close();
            }
        }
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
