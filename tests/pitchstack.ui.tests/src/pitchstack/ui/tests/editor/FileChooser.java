// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** Types a name into the system's dialogs for files, with real keys. */
public final class FileChooser {
    private static final String SCRIPT = """
            for i in $(seq 100); do
                w=$(xdotool search --onlyvisible --name "^$2$" 2>/dev/null | tail -n 1)
                [ -n "$w" ] && break
                sleep 0.1
            done
            [ -n "$w" ] || exit 1
            sleep 0.5
            xdotool windowfocus "$w"
            sleep 0.3
            [ "$3" = open ] && xdotool key ctrl+l && sleep 1
            xdotool key ctrl+a
            sleep 0.2
            xdotool type --delay 20 "$1"
            sleep 0.5
            xdotool key Return
            # A dialog that stays takes the keys of all tests to come.
            for i in $(seq 50); do
                xdotool search --onlyvisible --name "^$2$" >/dev/null 2>&1 || exit 0
                sleep 0.1
            done
            for i in 1 2 3; do
                xdotool key Escape
                sleep 0.3
            done
            exit 2
            """;

    private FileChooser() {
    }

    /** Does something that asks where to save, and names a file. */
    static void answer(Path file, Runnable action) throws IOException {
        answer("Save As", file, action);
        assertTrue(Files.exists(file), "nothing was saved in " + file);
    }

    /** Does something that asks for a file in a dialog of a title, and names one. */
    public static void answer(String title, Path file, Runnable action) throws IOException {
        answer(title, file, "save", action);
    }

    /** The same for a file that is to be read: such a dialog has a field for a name only when asked to. */
    public static void open(String title, Path file, Runnable action) throws IOException {
        answer(title, file, "open", action);
    }

    private static void answer(String title, Path file, String how, Runnable action) throws IOException {
        Process typist = new ProcessBuilder("sh", "-c", SCRIPT, "sh", file.toString(), title, how).inheritIO().start();
        action.run();
        Desk.settle();
        try {
            assertTrue(typist.waitFor(20, TimeUnit.SECONDS), "the dialog did not take the name");
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        } finally {
            typist.destroy();
        }
        assertEquals(0, typist.exitValue(), "1: no dialog “" + title + "” was seen, 2: it did not take the name");
    }
}
