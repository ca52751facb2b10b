// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;

/** A line with a word, how far the work is, and a button that stops it; it takes room only while it is shown. */
public final class Busy {
    private static final int PARTS = 100;
    private static final int BAR_WIDTH = 120;

    private final Composite parent;
    private final Composite row;
    private final Label word;
    private final ProgressBar bar;

    /**
     * @param parent where it stands, laid out as a grid
     * @param columns how many columns of the grid it spans
     * @param words what is being done, shown at the pointer, such as “Planning the list”
     * @param stop called when the work is no longer wanted
     */
    public Busy(Composite parent, int columns, String words, Runnable stop) {
        this.parent = parent;
        row = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).applyTo(row);
        GridDataFactory.fillDefaults().grab(true, false).span(columns, 1).exclude(true).applyTo(row);
        row.setVisible(false);
        word = new Label(row, SWT.NONE);
        word.setText("Working…");
        word.setToolTipText(words);
        bar = new ProgressBar(row, SWT.HORIZONTAL);
        bar.setMaximum(PARTS);
        Accessibles.name(bar, words);
        bar.setToolTipText(words);
        GridDataFactory.swtDefaults().hint(BAR_WIDTH, SWT.DEFAULT).applyTo(bar);
        Button button = new Button(row, SWT.PUSH);
        button.setText("Stop");
        button.setToolTipText("Stops this; nothing new is shown until something changes.");
        button.addListener(SWT.Selection, e -> stop.run());
    }

    /** Says in a word or two what is being done. */
    public void say(String words) {
        if (!word.getText().equals(words)) {
            word.setText(words);
            row.layout();
        }
    }

    /** Shows how far the work is, from 0 to 1. */
    public void show(double share) {
        bar.setSelection((int) (share * PARTS));
        set(true);
    }

    /** Takes the line away. */
    public void hide() {
        set(false);
    }

    private void set(boolean shown) {
        if (row.isDisposed() || row.getVisible() == shown) {
            return;
        }
        ((GridData) row.getLayoutData()).exclude = !shown;
        row.setVisible(shown);
        parent.layout();
    }
}
