// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
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
    private final Optional<Beside> beside;
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
     * @param beside what stands beside the text, if anything does
     */
    InPlaceField(Composite canvas, Rectangle place, Session session, Property property, Consumer<Boolean> typing,
            Optional<Beside> beside) {
        this.beside = beside;
        this.session = session;
        this.property = property;
        this.typing = typing;
        box = new Composite(canvas, SWT.BORDER);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(0, 2).applyTo(box);
        text = new Text(box, SWT.SINGLE);
        text.setText(beside.map(Beside::begin).orElse(property.text()));
        text.setToolTipText(property.tooltip());
        text.selectAll();
        text.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = property.label();
            }
        });
        beside.ifPresent(this::addBeside);
        reason = new Label(box, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).span(beside.isPresent() ? 1 : 2, 1).applyTo(text);
        int width = Math.max(LEAST_WIDTH, place.width);
        box.setBounds(place.x, place.y, width, box.computeSize(width, SWT.DEFAULT).y);
        say(meaning());
        box.moveAbove(null);
        typing.accept(true);
        text.setFocus();
        text.addListener(SWT.Modify, event -> say(meaning()));
        text.addListener(SWT.KeyDown, this::turn);
        watch(text);
    }

    private void addBeside(Beside choice) {
        Control control = choice.control(box, () -> say(meaning()));
        watch(control);
        control.addListener(SWT.KeyDown, event -> {
            if (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR) {
                event.doit = false;
                take(true);
            }
        });
    }

    /** The arrow keys choose what stands beside the text without leaving it. */
    private void turn(Event event) {
        if (beside.isPresent() && (event.keyCode == SWT.ARROW_UP || event.keyCode == SWT.ARROW_DOWN)) {
            event.doit = false;
            beside.get().turn(event.keyCode == SWT.ARROW_UP ? -1 : 1);
        }
    }

    /** Enter takes it, Escape leaves it, and so does going elsewhere than to another part of the field. */
    private void watch(Control part) {
        if (part == text) {
            part.addListener(SWT.DefaultSelection, event -> take(true));
        }
        part.addListener(SWT.FocusOut, event -> {
            if (beside.isEmpty()) {
                take(false);
            } else {
                box.getDisplay().asyncExec(this::takeUnlessWithin);
            }
        });
        part.addListener(SWT.Traverse, event -> {
            if (event.detail == SWT.TRAVERSE_ESCAPE) {
                event.doit = false;
                end(true);
            } else if (beside.isPresent()
                    && (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS)) {
                event.doit = false;
                (part == text ? box.getChildren()[1] : text).setFocus();
            }
        });
    }

    /** No focus anywhere means that a list is open, or another program is in front. */
    private void takeUnlessWithin() {
        if (!ended && !box.isDisposed()) {
            Control focus = box.getDisplay().getFocusControl();
            if (focus != null && !List.of(box.getChildren()).contains(focus)) {
                take(false);
            }
        }
    }

    private String whole() {
        return beside.map(choice -> choice.whole(text.getText())).orElse(text.getText());
    }

    private String meaning() {
        return beside.map(choice -> choice.meaning(whole())).orElse("");
    }

    private void take(boolean entered) {
        if (ended) {
            return;
        }
        if (whole().strip().equals(property.text())) {
            end(entered);
            return;
        }
        Entry entry = property.enter(whole());
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
        say(sentence);
        text.selectAll();
    }

    /** Says something below the text, or nothing. */
    private void say(String words) {
        reason.setText(words);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).exclude(words.isEmpty())
                .hint(box.getSize().x, SWT.DEFAULT).applyTo(reason);
        box.setSize(box.getSize().x, box.computeSize(box.getSize().x, SWT.DEFAULT).y);
        box.layout();
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
