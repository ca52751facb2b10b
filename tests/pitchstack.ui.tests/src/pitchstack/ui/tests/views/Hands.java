// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.File;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import pitchstack.edit.start.ShopDefaults.Theme;
import pitchstack.ui.views.preferences.WindowColours;

/** Eyes and fingers of a person at the window: waits, finds controls, presses real keys, and keeps pictures. */
public final class Hands {
    private static final long PATIENCE_MS = 15_000;

    private final Display display = Display.getCurrent();

    /** Lets the window work until something is so. */
    void until(String what, BooleanSupplier so) {
        long end = System.currentTimeMillis() + PATIENCE_MS;
        while (!so.getAsBoolean()) {
            if (System.currentTimeMillis() > end) {
                picture(inFront(), "in-vain-" + what.replaceAll("\\W+", "-"));
                fail("waited in vain until " + what);
            }
            if (!display.readAndDispatch()) {
                pause();
            }
        }
    }

    /** The program keeps windows that are never seen, too. */
    private Shell inFront() {
        return Arrays.stream(display.getShells()).filter(Shell::isVisible).findFirst().orElseGet(() -> display.getShells()[0]);
    }

    /** Lets the window work off what is waiting. */
    void settle() {
        long end = System.currentTimeMillis() + 150;
        while (System.currentTimeMillis() < end) {
            if (!display.readAndDispatch()) {
                pause();
            }
        }
    }

    /** Has the system colour all windows, and waits until it has. */
    public void colours(Theme theme) {
        boolean dark = theme == Theme.DARK;
        WindowColours.change(theme);
        long end = System.currentTimeMillis() + PATIENCE_MS;
        while (display.getSystemColor(SWT.COLOR_LIST_BACKGROUND).getRed() < 128 != dark) {
            assertTrue(System.currentTimeMillis() < end, "waited in vain for the colours " + theme);
            display.timerExec(5, () -> { });
            // The toolkit takes up new colours before it sleeps, and not while it is only asked for events.
            if (!display.readAndDispatch()) {
                display.sleep();
            }
        }
        settle();
    }

    private static void pause() {
        try {
            Thread.sleep(5);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            fail("interrupted");
        }
    }

    /** Puts the focus on a control. */
    void focus(Control control) {
        control.getShell().forceActive();
        settle();
        control.setFocus();
        until("the focus is there", control::isFocusControl);
    }

    /** Types characters that need no dead keys. */
    void type(String text) {
        for (char c : text.toCharArray()) {
            boolean shift = Character.isUpperCase(c) || "\"°".indexOf(c) >= 0;
            press(shift ? SWT.SHIFT : 0, 0, c);
        }
        settle();
    }

    /** Presses a key without a character, with modifiers held. */
    void key(int modifiers, int keyCode) {
        press(modifiers, keyCode, '\0');
        settle();
    }

    /** Presses the key of a character with modifiers held. */
    void chord(int modifiers, char character) {
        press(modifiers, 0, character);
        settle();
    }

    /** Presses keys from outside the program, by their names such as {@code alt+Next} for Page Down. */
    void pressOutside(String keys) {
        outside("key", "--delay", "100", keys);
    }

    /** Clicks the middle of a control with the mouse of the screen. */
    void clickOutside(Control control) {
        Point middle = control.toDisplay(control.getSize().x / 2, control.getSize().y / 2);
        outside("mousemove", String.valueOf(middle.x - 1), String.valueOf(middle.y), "sleep", "0.1", "mousemove",
                String.valueOf(middle.x), String.valueOf(middle.y), "sleep", "0.1", "click", "1");
        parkPointer();
    }

    /** Moves the pointer to where no tip comes up. */
    void parkPointer() {
        Rectangle screen = display.getBounds();
        outside("mousemove", String.valueOf(screen.width - 1), String.valueOf(screen.height - 1));
    }

    private void outside(String... what) {
        List<String> command = new ArrayList<>(List.of("xdotool"));
        command.addAll(List.of(what));
        try {
            Process acting = new ProcessBuilder(command).inheritIO().start();
            until("it is done", () -> !acting.isAlive());
            assertEquals(0, acting.exitValue(), command.toString());
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        settle();
    }

    /** Presses Enter, with modifiers held. */
    void enter(int modifiers) {
        press(modifiers, SWT.CR, SWT.CR);
        settle();
    }

    /** Presses a key that is a key code and a character at once, such as Escape and Tab. */
    void stroke(char key) {
        press(0, key, key);
        settle();
    }

    private void press(int modifiers, int keyCode, char character) {
        hold(SWT.KeyDown, modifiers);
        post(SWT.KeyDown, keyCode, character);
        post(SWT.KeyUp, keyCode, character);
        hold(SWT.KeyUp, modifiers);
    }

    private void hold(int type, int modifiers) {
        for (int modifier : new int[] {SWT.CTRL, SWT.SHIFT, SWT.ALT, SWT.COMMAND}) {
            if ((modifiers & modifier) != 0) {
                post(type, modifier, '\0');
            }
        }
    }

    private void post(int type, int keyCode, char character) {
        Event event = new Event();
        event.type = type;
        event.keyCode = keyCode;
        event.character = character;
        assertTrue(display.post(event), "the key cannot be pressed on this screen");
    }

    /** All controls of a kind below a composite. */
    <T extends Control> List<T> all(Composite root, Class<T> kind, Predicate<T> which) {
        List<T> found = new ArrayList<>();
        for (Control child : root.getChildren()) {
            if (kind.isInstance(child) && which.test(kind.cast(child))) {
                found.add(kind.cast(child));
            }
            if (child instanceof Composite inner) {
                found.addAll(all(inner, kind, which));
            }
        }
        return found;
    }

    /** The first visible control of a kind below a composite. */
    <T extends Control> T the(Composite root, Class<T> kind, Predicate<T> which) {
        List<T> found = all(root, kind, which.and(Control::isVisible));
        assertTrue(!found.isEmpty(), "no visible " + kind.getSimpleName() + " is such");
        return found.get(0);
    }

    /** Shows a page of the view in front by its button, which is the only one of its bar that is pressed. */
    void page(Composite root, List<String> pages, String title) {
        for (ToolBar bar : all(root, ToolBar.class, ToolBar::isVisible)) {
            List<ToolItem> buttons = Arrays.stream(bar.getItems()).filter(item -> pages.contains(item.getText())).toList();
            buttons.forEach(item -> item.setSelection(item.getText().equals(title)));
            buttons.stream().filter(ToolItem::getSelection).forEach(item -> item.notifyListeners(SWT.Selection, new Event()));
        }
        settle();
    }

    /** Does something as soon as a dialog is open, which may hold up whoever opens it. */
    void onceAsked(Consumer<Shell> then) {
        onceAsked(then, System.currentTimeMillis() + PATIENCE_MS);
    }

    private void onceAsked(Consumer<Shell> then, long end) {
        display.timerExec(20, () -> {
            Optional<Shell> dialog = Arrays.stream(display.getShells())
                    .filter(open -> open.isVisible() && (open.getStyle() & SWT.APPLICATION_MODAL) != 0).findFirst();
            if (dialog.isPresent()) {
                answer(dialog.get(), then);
            } else if (System.currentTimeMillis() < end) {
                onceAsked(then, end);
            }
        });
    }

    /** A dialog that could not be answered must not hold up the test for ever. */
    private static void answer(Shell dialog, Consumer<Shell> then) {
        try {
            then.accept(dialog);
        } catch (AssertionError e) {
            dialog.close();
            throw e;
        }
    }

    /** Keeps a picture of the window under {@code target/screens}. */
    void picture(Shell shell, String name) {
        settle();
        picture(shell.getBounds(), new File("target/screens"), name);
    }

    /** Keeps a picture of a part of the screen in a folder. */
    void picture(Rectangle area, File folder, String name) {
        Image image = new Image(display, area.width, area.height);
        GC gc = new GC(display);
        gc.copyArea(image, area.x, area.y);
        gc.dispose();
        ImageLoader loader = new ImageLoader();
        loader.data = new ImageData[] {image.getImageData()};
        image.dispose();
        folder.mkdirs();
        loader.save(new File(folder, name + ".png").getPath(), SWT.IMAGE_PNG);
    }
}
