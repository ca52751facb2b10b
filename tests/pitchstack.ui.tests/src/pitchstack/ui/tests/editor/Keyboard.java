// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.graphics.Point;

/** Keys and mouse of the test screen, moved from outside the program. */
final class Keyboard {
    private Keyboard() {
    }

    /** Presses keys one after the other, each by its name such as {@code ctrl+z}. */
    static void press(String... keys) throws IOException {
        Desk.shell().forceActive();
        Desk.settle();
        run("xdotool key --delay 150 " + String.join(" ", keys));
    }

    /** Drags from a point of the drawing to another in many small movements. */
    static void drag(Point from, Point to) throws IOException {
        dragOnScreen(Desk.canvas().toDisplay(from), Desk.canvas().toDisplay(to));
    }

    /** The same between two points of the screen. */
    static void dragOnScreen(Point start, Point end) throws IOException {
        List<String> moves = new ArrayList<>(List.of("xdotool mousemove " + (start.x - 2) + " " + start.y, "sleep 0.1",
                "xdotool mousemove " + start.x + " " + start.y, "sleep 0.1", "xdotool mousedown 1", "sleep 0.1"));
        for (int part = 1; part <= 30; part++) {
            moves.add("xdotool mousemove " + (start.x + (end.x - start.x) * part / 30) + " "
                    + (start.y + (end.y - start.y) * part / 30));
            moves.add("sleep 0.03");
        }
        moves.add("sleep 0.1 && xdotool mouseup 1");
        run(String.join(" && ", moves));
    }

    /** Puts the pointer back into the middle of the screen and the keyboard on the window, as both are at the start. */
    static void rest() throws IOException {
        run("xdotool mousemove 640 512 && w=$(xdotool search --onlyvisible --name '^Pitchstack' | head -n 1)"
                + " && xdotool windowfocus $w");
        Desk.shell().forceActive();
        Desk.settle();
    }

    private static void run(String script) throws IOException {
        Process hands = new ProcessBuilder("sh", "-c", script).inheritIO().start();
        Desk.until("the keys were pressed", () -> !hands.isAlive());
        Desk.sleep(200);
        Desk.settle();
        assertEquals(0, hands.exitValue(), script);
    }
}
