// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.palette;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;

/**
 * The pieces as a tool bar above the drawing. It is the system's own, so that it follows the theme, can be reached with the
 * Tab key and is read aloud; the platform's palette for drawings does none of these.
 */
public final class PieceBar {
    private final Map<Piece, ToolItem> items = new EnumMap<>(Piece.class);
    private final ToolBar bar;
    private int fullWidth;

    /**
     * @param parent laid out as a grid of one column
     * @param picked told of the piece that is to be placed next, or of none
     */
    public PieceBar(Composite parent, Consumer<Optional<Piece>> picked) {
        bar = new ToolBar(parent, SWT.FLAT | SWT.RIGHT);
        GridDataFactory.fillDefaults().grab(true, false).indent(10, 0).hint(1, SWT.DEFAULT).applyTo(bar);
        for (Piece piece : Piece.values()) {
            ToolItem item = new ToolItem(bar, SWT.CHECK);
            item.setText(piece.label());
            item.setToolTipText(piece.tip());
            Image image = ImageDescriptor.createFromURL(PieceBar.class.getResource("/icons/piece-" + piece.id() + ".svg"))
                    .createImage();
            item.setImage(image);
            item.addDisposeListener(event -> image.dispose());
            item.addSelectionListener(SelectionListener.widgetSelectedAdapter(
                    event -> picked.accept(item.getSelection() ? Optional.of(piece) : Optional.empty())));
            items.put(piece, item);
        }
        fullWidth = bar.computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
        bar.addListener(SWT.Resize, event -> fit());
        bar.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                if (event.childID == ACC.CHILDID_SELF) {
                    event.result = "Pieces to place";
                }
            }
        });
    }

    /** Where the names have no room the icons stand alone; the tips still name them. */
    private void fit() {
        boolean room = bar.getSize().x >= fullWidth;
        items.forEach((piece, item) -> {
            String text = room ? piece.label() : "";
            if (!item.getText().equals(text)) {
                item.setText(text);
            }
        });
    }

    /** Shows which piece is in hand. */
    public void show(Optional<Piece> inHand) {
        items.forEach((piece, item) -> {
            if (!item.isDisposed()) {
                item.setSelection(inHand.filter(piece::equals).isPresent());
            }
        });
    }
}
