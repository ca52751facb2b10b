// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/** What a view says while it has nothing else to show. */
public final class Message {
    private static final int MARGIN = 10;

    private final Composite page;
    private final Label label;

    /** @param parent usually a page book */
    public Message(Composite parent) {
        page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().margins(MARGIN, MARGIN).applyTo(page);
        label = new Label(page, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(label);
    }

    /** Says one or a few sentences. */
    public void say(String text) {
        label.setText(text.replace("&", "&&"));
        page.layout();
    }

    /** The control to show. */
    public Control control() {
        return page;
    }
}
