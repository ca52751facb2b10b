// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Combo;

/** What a list that is too narrow for its words says at the pointer: what is chosen, and what the list is for. */
public final class Chosen {
    private Chosen() {
    }

    /**
     * Keeps the tip of a list.
     *
     * @param why what the list is for
     */
    public static void tell(Combo combo, String why) {
        combo.setToolTipText(why);
        for (int event : new int[] {SWT.Resize, SWT.Selection, SWT.Modify}) {
            combo.addListener(event, e -> update(combo, why));
        }
    }

    private static void update(Combo combo, String why) {
        GC gc = new GC(combo);
        int words = gc.textExtent(combo.getText()).x;
        gc.dispose();
        // Beside the words there are an arrow and a frame, about as wide as the list is high.
        boolean cut = words > combo.getSize().x - combo.getSize().y;
        String tip = cut ? combo.getText() + "\n\n" + why : why;
        if (!tip.equals(combo.getToolTipText())) {
            combo.setToolTipText(tip);
        }
    }
}
