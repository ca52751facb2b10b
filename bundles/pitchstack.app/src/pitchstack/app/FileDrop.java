// SPDX-License-Identifier: EPL-2.0
package pitchstack.app;

import java.nio.file.Path;
import java.util.Arrays;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchWindow;

/** Files that are dragged into the window are opened. The files stay where they are, whatever key is held. */
final class FileDrop extends DropTargetAdapter {
    private final IWorkbenchWindow window;

    private FileDrop(IWorkbenchWindow window) {
        this.window = window;
    }

    /** Lets a window take files, wherever no part of it takes what is dragged itself. */
    static void into(IWorkbenchWindow window) {
        Shell shell = window.getShell();
        DropTarget target = new DropTarget(shell, DND.DROP_COPY | DND.DROP_MOVE | DND.DROP_LINK | DND.DROP_DEFAULT);
        target.setTransfer(new Transfer[] {FileTransfer.getInstance()});
        target.addDropListener(new FileDrop(window));
    }

    @Override
    public void dragEnter(DropTargetEvent event) {
        copy(event);
    }

    @Override
    public void dragOperationChanged(DropTargetEvent event) {
        copy(event);
    }

    private static void copy(DropTargetEvent event) {
        event.detail = (event.operations & DND.DROP_COPY) != 0 ? DND.DROP_COPY : event.operations & DND.DROP_LINK;
    }

    @Override
    public void drop(DropTargetEvent event) {
        if (event.data instanceof String[] names) {
            // Once the other program has its answer: opening may ask something.
            window.getShell().getDisplay().asyncExec(
                    () -> FileOpening.open(window, Arrays.stream(names).map(Path::of).toList()));
        }
    }
}
