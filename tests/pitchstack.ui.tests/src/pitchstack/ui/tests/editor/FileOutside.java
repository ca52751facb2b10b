// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DragSource;
import org.eclipse.swt.dnd.DragSourceAdapter;
import org.eclipse.swt.dnd.DragSourceEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Another program with a file that can be dragged out of it. */
final class FileOutside {
    private FileOutside() {
    }

    /** @param arguments the file, and x, y, width and height of the window on the screen */
    public static void main(String[] arguments) {
        Display display = new Display();
        Shell shell = new Shell(display, SWT.NO_TRIM | SWT.ON_TOP | SWT.NO_FOCUS);
        int width = Integer.parseInt(arguments[3]);
        int height = Integer.parseInt(arguments[4]);
        shell.setBounds(Integer.parseInt(arguments[1]), Integer.parseInt(arguments[2]), width, height);
        Label handle = new Label(shell, SWT.NONE);
        handle.setText("drag me");
        handle.setBounds(0, 0, width, height);
        DragSource source = new DragSource(handle, DND.DROP_COPY | DND.DROP_MOVE);
        source.setTransfer(new Transfer[] {FileTransfer.getInstance()});
        source.addDragListener(new DragSourceAdapter() {
            @Override
            public void dragSetData(DragSourceEvent event) {
                event.data = new String[] {arguments[0]};
            }
        });
        shell.setVisible(true);
        display.asyncExec(() -> System.out.println("ready"));
        while (!shell.isDisposed()) {
            if (!display.readAndDispatch()) {
                display.sleep();
            }
        }
    }
}
