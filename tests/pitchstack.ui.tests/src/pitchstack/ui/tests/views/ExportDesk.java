// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;

/** A person at one of the export dialogs. */
final class ExportDesk {
    private final Hands hands = new Hands();
    private final Bench bench;
    private final String title;
    private final String command;

    /**
     * @param title of the dialog
     * @param command that opens it
     */
    ExportDesk(Bench bench, String title, String command) {
        this.bench = bench;
        this.title = title;
        this.command = command;
    }

    /** Opens the dialog and does something in it; if it is open afterwards it is closed. */
    void export(Consumer<Shell> fill) {
        new Modal(hands).during(title, () -> bench.command(command, Map.of()), fill);
        hands.settle();
    }

    /** Whether the menu offers it. */
    boolean isOffered() {
        hands.settle();
        return PlatformUI.getWorkbench().getService(ICommandService.class).getCommand(command).isEnabled();
    }

    /** Presses a button by the keyboard as soon as it is shown. */
    void press(Shell dialog, String text) {
        hands.until("“" + text + "” is shown", () -> !shown(dialog, text).isEmpty());
        hands.focus(shown(dialog, text).get(0));
        hands.chord(0, ' ');
    }

    private List<Button> shown(Shell dialog, String text) {
        return hands.all(dialog, Button.class, b -> b.getText().replace("&", "").equals(text) && b.isVisible());
    }

    /** Chooses an item, in whichever list has it. */
    void choose(Shell dialog, String item) {
        Combo combo = hands.the(dialog, Combo.class, c -> c.indexOf(item) >= 0);
        combo.select(combo.indexOf(item));
        combo.notifyListeners(SWT.Selection, new Event());
    }

    Button finish(Shell dialog) {
        return hands.the(dialog, Button.class, b -> b.getText().replace("&", "").equals("Finish"));
    }

    /** Presses Finish by the keyboard, once it can be pressed. */
    void finishOnceReady(Shell dialog) {
        hands.until("the file is ready", () -> finish(dialog).isEnabled());
        hands.focus(finish(dialog));
        hands.chord(0, ' ');
    }

    /** Waits until a text can be read. */
    void untilSaid(Shell dialog, String part) {
        hands.until("“" + part + "” is said", () -> said(dialog, part));
    }

    boolean said(Shell dialog, String part) {
        return hands.all(dialog, Text.class, t -> t.getText().contains(part)).size()
                + hands.all(dialog, Label.class, l -> l.getText().contains(part)).size() > 0;
    }

    /** Keeps a picture of the dialog. */
    void picture(Shell dialog, String name) {
        hands.picture(dialog, name);
    }
}
