// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Map;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import pitchstack.edit.Session;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFile;

/** The window with documents in it. */
final class Bench {
    private static final long LONGEST_MS = 5000;
    private final IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
    private final Hands hands = new Hands();
    private final Path folder;

    /** @param folder where documents are saved */
    Bench(Path folder) {
        this.folder = folder;
        takeKeys();
    }

    /**
     * Gives the keys to this window. Without a window manager nobody does so when another window of the program closes, and
     * the keys of the next test go nowhere. A tip under the pointer would take them too.
     */
    private void takeKeys() {
        hands.parkPointer();
        String title = shell().getText();
        String mark = "bench " + System.nanoTime();
        shell().setText(mark);
        try {
            Process typist = new ProcessBuilder("sh", "-c", "for i in 1 2 3 4 5 6 7 8 9 10; do "
                    + "w=$(xdotool search --name \"^$1$\" 2>/dev/null | tail -n 1); "
                    + "[ -n \"$w\" ] && exec xdotool windowfocus \"$w\"; sleep 0.1; done", "sh", mark).start();
            long end = System.currentTimeMillis() + LONGEST_MS;
            while (typist.isAlive() && System.currentTimeMillis() < end) {
                hands.settle();
            }
            typist.destroy();
        } catch (IOException e) {
            throw new UncheckedIOException("xdotool is needed to give the window the keys", e);
        } finally {
            shell().setText(title);
        }
    }

    IWorkbenchPage page() {
        return window.getActivePage();
    }

    Shell shell() {
        return window.getShell();
    }

    /** Saves a positioner under a name and opens the file. */
    Session open(String name, Positioner positioner) {
        Path file = folder.resolve(name + ".pitchstack");
        try {
            StackFile.save(positioner, file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return open(file);
    }

    /** Opens a copy of the cross-cut fence of the examples. */
    Session openFence() throws IOException {
        String example = FileLocator.toFileURL(
                Platform.getBundle("pitchstack.help").getEntry("examples/cross-cut-fence.pitchstack")).getPath();
        command("pitchstack.ui.editor.openCopy", Map.of("path", new File(example).getPath()));
        return editor().getAdapter(Session.class);
    }

    /** Opens a file of {@link #open(String, Positioner)} again. */
    Session reopen(String name) {
        return open(folder.resolve(name + ".pitchstack"));
    }

    private Session open(Path file) {
        command("pitchstack.ui.editor.openFile", Map.of("path", file.toString()));
        return editor().getAdapter(Session.class);
    }

    /** Runs a command as a menu does. */
    void command(String id, Map<String, String> parameters) {
        ParameterizedCommand call = ParameterizedCommand.generateCommand(
                window.getService(ICommandService.class).getCommand(id), parameters);
        try {
            window.getService(IHandlerService.class).executeCommand(call, null);
        } catch (CommandException e) {
            throw new AssertionError(id, e);
        }
        hands.settle();
    }

    /** The editor in front. */
    IEditorPart editor() {
        IEditorPart editor = page().getActiveEditor();
        assertNotNull(editor, "no editor is open");
        return editor;
    }

    /** Shows a view and brings it to the front. */
    IViewPart view(String id) {
        try {
            IViewPart view = page().showView(id);
            hands.settle();
            return view;
        } catch (PartInitException e) {
            throw new AssertionError(id, e);
        }
    }

    /** What the editor has selected. */
    ISelection selection() {
        return editor().getSite().getSelectionProvider().getSelection();
    }

    /** Selects an element in the editor. */
    void select(Object element) {
        editor().getSite().getSelectionProvider().setSelection(new StructuredSelection(element));
        hands.settle();
    }

    /** Closes all documents without asking. */
    void clear() {
        page().closeAllEditors(false);
        hands.settle();
    }
}
