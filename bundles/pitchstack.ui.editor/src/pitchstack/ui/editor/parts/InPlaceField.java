// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.function.Consumer;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import pitchstack.edit.Property;
import pitchstack.edit.Property.Entry;
import pitchstack.edit.Session;

/**
 * A field over the drawing in which one fact is typed where it stands. Enter takes it, Escape leaves it as it was; what
 * cannot be taken is said below the field, which then stays.
 */
final class InPlaceField {
    private static final int LEAST_WIDTH = 180;

    private final Session session;
    private final Property property;
    private final Consumer<Boolean> typing;
    private final Composite box;
    private final Text text;
    private final Label reason;
    private boolean ended;

    /**
     * Opens the field.
     *
     * @param canvas what it lies on
     * @param place where, in the canvas
     * @param typing told that typing begins, and that it has ended
     */
    InPlaceField(Composite canvas, Rectangle place, Session session, Property property, Consumer<Boolean> typing) {
        this.session = session;
        this.property = property;
        this.typing = typing;
        box = new Composite(canvas, SWT.BORDER);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(box);
        text = new Text(box, SWT.SINGLE);
        text.setText(property.text());
        text.setToolTipText(property.tooltip());
        text.selectAll();
        text.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = property.label();
            }
        });
        reason = new Label(box, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(reason);
        int width = Math.max(LEAST_WIDTH, place.width);
        box.setBounds(place.x, place.y, width, box.computeSize(width, SWT.DEFAULT).y);
        box.moveAbove(null);
        typing.accept(true);
        text.setFocus();
        text.addListener(SWT.DefaultSelection, event -> take(true));
        text.addListener(SWT.FocusOut, event -> take(false));
        text.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_ESCAPE) {
                event.doit = false;
                end(true);
            }
        });
    }

    private void take(boolean entered) {
        if (ended) {
            return;
        }
        if (text.getText().strip().equals(property.text())) {
            end(entered);
            return;
        }
        Entry entry = property.enter(text.getText());
        if (entry instanceof Entry.Accepted accepted) {
            end(entered);
            session.run(accepted.edit());
        } else if (entry instanceof Entry.Refused refused) {
            refuse(refused.sentence(), entered);
        }
    }

    private void refuse(String sentence, boolean entered) {
        if (!entered) {
            // The person has gone elsewhere; a field left open there would only be in the way.
            end(false);
            return;
        }
        reason.setText(sentence);
        GridDataFactory.fillDefaults().grab(true, false).hint(box.getSize().x, SWT.DEFAULT).applyTo(reason);
        Point size = box.computeSize(box.getSize().x, SWT.DEFAULT);
        box.setSize(size);
        box.layout();
        text.selectAll();
    }

    private void end(boolean backToDrawing) {
        if (ended) {
            return;
        }
        ended = true;
        typing.accept(false);
        if (backToDrawing) {
            box.getParent().setFocus();
        }
        box.setVisible(false);
        box.getDisplay().asyncExec(box::dispose);
    }
}
