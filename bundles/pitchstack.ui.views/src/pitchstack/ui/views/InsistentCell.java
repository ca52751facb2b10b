// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.jface.viewers.TextCellEditor;
import org.eclipse.swt.events.SelectionEvent;
import org.eclipse.swt.widgets.Composite;

/** A text cell that stays open, with the reason shown, when Enter is pressed on a text that cannot be taken. */
public final class InsistentCell extends TextCellEditor {
    private final Consumer<String> problem;
    private Function<String, Optional<String>> refusal = typed -> Optional.empty();

    private Runnable entered = () -> { };

    /**
     * @param parent the table
     * @param problem told why what is typed cannot be taken; empty once it can, or the cell is left
     */
    public InsistentCell(Composite parent, Consumer<String> problem) {
        super(parent);
        this.problem = problem;
        text.addModifyListener(e -> tell());
    }

    /** @param why says why a text cannot be taken, for the line that is edited next */
    public void refuse(Function<String, Optional<String>> why) {
        refusal = why;
    }

    /** @param listener called after Enter has taken a text, and only then */
    public void onEnter(Runnable listener) {
        entered = listener;
    }

    private Optional<String> tell() {
        Optional<String> why = refusal.apply(text.getText());
        problem.accept(why.orElse(""));
        return why;
    }

    @Override
    protected void handleDefaultSelection(SelectionEvent event) {
        if (tell().isEmpty()) {
            super.handleDefaultSelection(event);
            entered.run();
        } else {
            text.getDisplay().beep();
        }
    }

    /** A text that cannot be taken is dropped when the focus goes elsewhere; the reason stays to be read. */
    @Override
    protected void focusLost() {
        if (isActivated() && tell().isPresent()) {
            fireCancelEditor();
            deactivate();
        } else {
            super.focusLost();
        }
    }

    @Override
    public void deactivate() {
        super.deactivate();
        refusal = typed -> Optional.empty();
    }
}
