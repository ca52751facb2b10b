// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import java.util.function.Supplier;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

/** Names for those who hear the screen instead of seeing it. */
public final class Accessibles {
    private Accessibles() {
    }

    /** Names a control whose own text does not say what it is for. */
    public static void name(Control control, String name) {
        name(control, () -> name);
    }

    /** Names a control whose name changes. */
    public static void name(Control control, Supplier<String> name) {
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = name.get();
            }
        });
    }
}
