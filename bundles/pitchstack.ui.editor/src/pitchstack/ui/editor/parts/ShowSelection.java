// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.function.Consumer;
import org.eclipse.gef.editpolicies.SelectionEditPolicy;

/** Lets a figure show that it is selected. */
final class ShowSelection extends SelectionEditPolicy {
    private final Consumer<Boolean> figure;

    ShowSelection(Consumer<Boolean> figure) {
        this.figure = figure;
    }

    @Override
    protected void showSelection() {
        figure.accept(true);
    }

    @Override
    protected void hideSelection() {
        figure.accept(false);
    }
}
