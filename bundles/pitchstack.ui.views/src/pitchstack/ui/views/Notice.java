// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;

/** A sentence with an icon that takes room only while there is something to say. */
public final class Notice {
    /** Lets long sentences wrap instead of widening the view. */
    private static final int NARROW = 60;

    private final Composite row;
    private final Label sentence;

    /**
     * @param parent where it stands, laid out as a grid
     * @param icon an image of {@link ISharedImages}
     * @param columns how many columns of the grid it spans
     */
    public Notice(Composite parent, String icon, int columns) {
        row = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(row);
        GridDataFactory.fillDefaults().grab(true, false).span(columns, 1).exclude(true).applyTo(row);
        row.setVisible(false);
        Image image = PlatformUI.getWorkbench().getSharedImages().getImage(icon);
        Label picture = new Label(row, SWT.NONE);
        picture.setImage(image);
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(picture);
        sentence = new Label(row, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(NARROW, SWT.DEFAULT).applyTo(sentence);
    }

    /**
     * Says something, or nothing; the parent is then to be laid out again.
     *
     * @param text one sentence, or empty to say nothing
     */
    public void say(String text) {
        sentence.setText(text.replace("&", "&&"));
        ((GridData) row.getLayoutData()).exclude = text.isEmpty();
        row.setVisible(!text.isEmpty());
    }
}
