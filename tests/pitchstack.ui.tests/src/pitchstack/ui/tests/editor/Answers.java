// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Reads and answers dialogs of this program. */
final class Answers {
    private static final int EVERY_MS = 50;
    private static final int TRIES = 200;

    private Answers() {
    }

    /**
     * Does something that opens a dialog, and answers it.
     *
     * @param title the title of the dialog
     * @param answer {@link SWT#CR} for its default button, {@link SWT#ESC} to close it
     * @param action what opens it and returns when it is closed
     * @return what the dialog said
     */
    static String dialog(String title, char answer, Runnable action) {
        return dialog(title, shell -> { }, answer, action);
    }

    /**
     * Does something that opens a dialog, fills it in, and answers it.
     *
     * @param fill fills in the dialog
     */
    static String dialog(String title, Consumer<Shell> fill, char answer, Runnable action) {
        String[] said = new String[1];
        watch(title, fill, answer, said, TRIES);
        action.run();
        assertNotNull(said[0], "no dialog “" + title + "”");
        return said[0];
    }

    private static void watch(String title, Consumer<Shell> fill, char answer, String[] said, int tries) {
        Display.getCurrent().timerExec(EVERY_MS, () -> {
            for (Shell shell : Display.getCurrent().getShells()) {
                if (shell.getText().equals(title) && shell.isVisible()) {
                    fill.accept(shell);
                    said[0] = text(shell);
                    press(shell, answer);
                    return;
                }
            }
            if (tries > 0) {
                watch(title, fill, answer, said, tries - 1);
            }
        });
    }

    private static String text(Shell shell) {
        return Desk.controls(shell, control -> control instanceof Label).stream()
                .map(control -> ((Label) control).getText()).collect(Collectors.joining(" "));
    }

    private static void press(Shell shell, char answer) {
        if (answer == SWT.ESC) {
            shell.close();
            return;
        }
        Button button = shell.getDefaultButton();
        List<Button> all = Desk.controls(shell, control -> control instanceof Button).stream()
                .map(Button.class::cast).toList();
        (button == null ? all.get(0) : button).notifyListeners(SWT.Selection, new Event());
    }
}
