// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import java.util.function.DoubleSupplier;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;
import pitchstack.ui.views.Accessibles;

/** A line that is there only while the work takes long: what is done, how far it is, and a button to stop it. */
final class BusyLine {
    private static final int STEPS = 1000;
    private static final int LOOK_MS = 100;

    private final Composite line;
    private final Label label;
    private final ProgressBar bar;
    private final Button stop;
    private final DoubleSupplier part;
    private final Runnable look = this::look;

    /**
     * @param parent where it stands, laid out as a grid
     * @param part tells how far the work is, from 0 to 1
     */
    BusyLine(Composite parent, DoubleSupplier part) {
        this.part = part;
        line = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).applyTo(line);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(line);
        line.setVisible(false);
        label = new Label(line, SWT.NONE);
        bar = new ProgressBar(line, SWT.HORIZONTAL);
        bar.setMaximum(STEPS);
        Accessibles.name(bar, "How far the planning is");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(bar);
        stop = new Button(line, SWT.PUSH);
        stop.setText("Cancel");
        stop.setToolTipText("Stop planning and keep the answers as they were (Escape)");
    }

    /** @param listener called when the work shall be stopped */
    void onStop(Runnable listener) {
        stop.addListener(SWT.Selection, e -> listener.run());
    }

    /** Shows that something is being done. */
    void show(String what) {
        label.setText(what);
        setShown(true);
        look();
    }

    /** Shows nothing. */
    void hide() {
        line.getDisplay().timerExec(-1, look);
        setShown(false);
    }

    private void look() {
        if (!line.isDisposed() && line.getVisible()) {
            bar.setSelection((int) Math.round(part.getAsDouble() * STEPS));
            line.getDisplay().timerExec(LOOK_MS, look);
        }
    }

    private void setShown(boolean shown) {
        if (line.getVisible() != shown) {
            ((GridData) line.getLayoutData()).exclude = !shown;
            line.setVisible(shown);
            line.getParent().layout();
        }
    }
}
