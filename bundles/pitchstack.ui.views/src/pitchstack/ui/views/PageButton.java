// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.ui.IActionBars;

/** A button above a view that shows one of its pages; of those in one view, one is pressed. */
public final class PageButton extends Action {
    private final Runnable show;

    private PageButton(String title, String tooltip, Runnable show) {
        super(title, IAction.AS_RADIO_BUTTON);
        this.show = show;
        setToolTipText(tooltip);
    }

    /**
     * Adds one, and its entry in the menu of the view.
     *
     * @param show what pressing it does
     */
    public static PageButton add(IActionBars bars, String title, String tooltip, Runnable show) {
        PageButton button = new PageButton(title, tooltip, show);
        bars.getToolBarManager().add(button);
        bars.getMenuManager().add(button);
        return button;
    }

    @Override
    public void run() {
        if (isChecked()) {
            show.run();
        }
    }
}
