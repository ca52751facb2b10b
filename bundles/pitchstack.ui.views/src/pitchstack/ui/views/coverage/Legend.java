// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import java.util.Arrays;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import pitchstack.core.coverage.Reached;
import pitchstack.ui.views.Colours;
import pitchstack.ui.views.coverage.strip.Column;

/** What the bars of the strip mean, each drawn as in the strip with its words beside it. */
final class Legend {
    private static final int SWATCH_PX = 14;
    private static final int GAP_PX = 5;

    private final Composite row;
    private final Composite lost;

    Legend(Composite parent) {
        row = new Composite(parent, SWT.NONE);
        row.setLayout(RowLayoutFactory.fillDefaults().wrap(true).spacing(2 * GAP_PX).create());
        entry(Column.of(Reached.CLEAN), "clean", "Reached by a setting whose engaged teeth are all fit.");
        entry(Column.of(Reached.WORN), "worn only, lower", "Reached only by settings over worn teeth; drawn half as high as clean ones.");
        entry(Column.of(Reached.NOT), "not reached", "Reached by no setting within the tolerance.");
        entry(new Column(0.35, 0.3, 0.35), "mixed",
                "Several stretches in one column of pixels, stacked by their shares: clean ones lowest, those not reached on"
                        + " top in grey. Zoom in to tell them apart.");
        lost = entry(Column.LOST, "lost", "Reached now, and not if what is supposed were true.");
        lost.setLayoutData(new RowData());
        showLost(false);
    }

    /** Shows or hides what only a comparison has. */
    void showLost(boolean shown) {
        ((RowData) lost.getLayoutData()).exclude = !shown;
        lost.setVisible(shown);
        row.getParent().layout(new Control[] {row});
    }

    Composite control() {
        return row;
    }

    private Composite entry(Column column, String word, String meaning) {
        Column[] columns = new Column[SWATCH_PX];
        Arrays.fill(columns, column);
        Image image = new Image(row.getDisplay(), SWATCH_PX, SWATCH_PX);
        Colours.follow(row, () -> paint(image, columns));
        row.addListener(SWT.Dispose, e -> image.dispose());
        Composite entry = new Composite(row, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(GAP_PX, 0).applyTo(entry);
        Label swatch = new Label(entry, SWT.NONE);
        swatch.setImage(image);
        swatch.setToolTipText(meaning);
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(swatch);
        Label label = new Label(entry, SWT.NONE);
        label.setText(word);
        label.setToolTipText(meaning);
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(label);
        return entry;
    }

    private static void paint(Image swatch, Column[] columns) {
        Display display = (Display) swatch.getDevice();
        Image painted = new Image(display, new Ink(display).picture(columns, SWATCH_PX));
        GC gc = new GC(swatch);
        gc.drawImage(painted, 0, 0);
        gc.dispose();
        painted.dispose();
    }
}
