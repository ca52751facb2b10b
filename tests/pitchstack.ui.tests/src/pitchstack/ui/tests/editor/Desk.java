// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import pitchstack.model.Positioner;

/** The window, as a person's hands find it. */
final class Desk {
    /** Longer than anything takes, also where other work keeps the machine busy. */
    static final long PATIENCE_MS = 60_000;

    private Desk() {
    }

    static IWorkbenchWindow window() {
        return PlatformUI.getWorkbench().getActiveWorkbenchWindow();
    }

    static IWorkbenchPage page() {
        return window().getActivePage();
    }

    static Shell shell() {
        return window().getShell();
    }

    /** Lets the window do what it has to do, until nothing is left. */
    static void settle() {
        Display display = Display.getCurrent();
        for (int quiet = 0; quiet < 3; quiet++) {
            while (display.readAndDispatch()) {
                quiet = 0;
            }
            sleep(10);
        }
    }

    static void until(String what, BooleanSupplier holds) {
        long end = System.currentTimeMillis() + PATIENCE_MS;
        while (!holds.getAsBoolean()) {
            assertTrue(System.currentTimeMillis() < end, "waited in vain until " + what);
            settle();
        }
    }

    static void sleep(long ms) {
        try {
            Thread.sleep(ms);
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    /** Runs a command as a menu or a key does. */
    static void command(String id, Map<String, String> parameters) {
        ParameterizedCommand command = ParameterizedCommand.generateCommand(
                window().getService(ICommandService.class).getCommand(id), parameters);
        try {
            window().getService(IHandlerService.class).executeCommand(command, null);
        } catch (CommandException e) {
            throw new AssertionError(id, e);
        }
        settle();
    }

    static void command(String id) {
        command(id, Map.of());
    }

    /** Opens a file and gives the editor that shows it. */
    static IEditorPart open(Path file) {
        command("pitchstack.ui.editor.openFile", Map.of("path", file.toString()));
        IEditorPart editor = page().getActiveEditor();
        assertNotNull(editor, "no editor opened");
        return editor;
    }

    /** Saves a positioner, opens it, and gives its drawing the focus. */
    static IEditorPart draw(Positioner positioner, Path folder) throws IOException {
        IEditorPart editor = open(Stacks.save(positioner, folder.resolve("stack.pitchstack")));
        canvas().setFocus();
        settle();
        if (!canvas().isFocusControl()) {
            // Where no window manager runs, nobody gives the keys back that a closed window had.
            Keyboard.rest();
            canvas().setFocus();
            settle();
        }
        return editor;
    }

    /** The element that the workbench says is selected. */
    static Object selected() {
        return page().getSelection() instanceof IStructuredSelection list ? list.getFirstElement() : null;
    }

    static void closeAll() {
        page().closeAllEditors(false);
        settle();
    }

    /** The canvas of the drawing that is seen. */
    static FigureCanvas canvas() {
        return (FigureCanvas) controls(shell(), control -> control instanceof FigureCanvas && control.isVisible()).get(0);
    }

    static List<Control> controls(Composite within, Predicate<Control> wanted) {
        List<Control> found = new ArrayList<>();
        Deque<Control> todo = new ArrayDeque<>(List.of(within));
        while (!todo.isEmpty()) {
            Control control = todo.poll();
            if (wanted.test(control)) {
                found.add(control);
            }
            if (control instanceof Composite composite) {
                todo.addAll(List.of(composite.getChildren()));
            }
        }
        return found;
    }

    static void mouse(int type, int x, int y, int button, int state) {
        Event event = new Event();
        event.x = x;
        event.y = y;
        event.button = button;
        event.stateMask = state;
        event.count = type == SWT.MouseDown ? 1 : 0;
        canvas().notifyListeners(type, event);
        settle();
    }

    static void press(int x, int y) {
        mouse(SWT.MouseMove, x, y, 0, 0);
        mouse(SWT.MouseDown, x, y, 1, 0);
    }

    static void dragTo(int x, int y) {
        mouse(SWT.MouseMove, x, y, 0, SWT.BUTTON1);
    }

    static void release(int x, int y) {
        mouse(SWT.MouseUp, x, y, 1, SWT.BUTTON1);
    }

    static void click(int x, int y) {
        press(x, y);
        release(x, y);
    }

    static void wheel(int x, int y, int count, int state) {
        Event event = new Event();
        event.x = x;
        event.y = y;
        event.count = count;
        event.stateMask = state;
        event.doit = true;
        canvas().notifyListeners(SWT.MouseWheel, event);
        settle();
    }

    static void key(int code, int state) {
        key(code, state, code == SWT.ESC ? SWT.ESC : 0);
    }

    static void key(int code, int state, char character) {
        Event event = new Event();
        event.keyCode = code;
        event.character = character;
        event.stateMask = state;
        event.doit = true;
        canvas().notifyListeners(SWT.KeyDown, event);
        canvas().notifyListeners(SWT.KeyUp, event);
        settle();
    }

    /** The entry of a menu of the window whose text begins so, with the menu opened as a click does. */
    static MenuItem menuItem(String menu, String begins) {
        for (MenuItem top : shell().getMenuBar().getItems()) {
            if (plain(top.getText()).equals(menu)) {
                return entry(top.getMenu(), begins);
            }
        }
        throw new AssertionError("no menu " + menu);
    }

    static MenuItem entry(Menu menu, String begins) {
        menu.notifyListeners(SWT.Show, new Event());
        for (MenuItem item : menu.getItems()) {
            if (plain(item.getText()).startsWith(begins)) {
                return item;
            }
        }
        throw new AssertionError("no entry " + begins);
    }

    static String plain(String text) {
        return text.replace("&", "").replaceAll("\\t.*", "");
    }
}
