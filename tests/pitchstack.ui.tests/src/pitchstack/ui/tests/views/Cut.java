// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;

/** What a person cannot see as a whole on a page, not even by scrolling down. */
final class Cut {
    private Cut() {
    }

    /** Visible controls with words that are cut, squeezed or out of reach, each in a few words. */
    static List<String> in(Composite root) {
        List<String> cut = new ArrayList<>();
        for (Control control : root.getChildren()) {
            if (control.isVisible()) {
                if (control instanceof Label || control instanceof Button || control instanceof Combo || control instanceof Text
                        || control instanceof Scale || control instanceof Table) {
                    of(control).ifPresent(cut::add);
                } else if (control instanceof Composite inner) {
                    cut.addAll(in(inner));
                }
            }
        }
        return cut;
    }

    private static Optional<String> of(Control control) {
        Point size = control.getSize();
        Rectangle seen = reachable(control);
        if (seen.width < size.x || seen.height < size.y) {
            return said(control, "only " + seen.width + " x " + seen.height + " can be seen");
        }
        if (control instanceof Table table) {
            return size.y < table.getHeaderHeight() + table.getItemHeight() ? said(control, "no row can be seen")
                    : Optional.empty();
        }
        if (control instanceof Label || control instanceof Button) {
            Point needs = control.computeSize((control.getStyle() & SWT.WRAP) != 0 ? size.x : SWT.DEFAULT, SWT.DEFAULT);
            return needs.x > size.x || needs.y > size.y ? said(control, "needs " + needs.x + " x " + needs.y)
                    : Optional.empty();
        }
        return Optional.empty();
    }

    private static Optional<String> said(Control control, String what) {
        String words = control instanceof Label label ? label.getText() : control instanceof Button button ? button.getText() : "";
        return Optional.of(control.getClass().getSimpleName() + " “" + words + "” of " + control.getSize().x + " x "
                + control.getSize().y + ": " + what);
    }

    /** What is inside of all parents; where one of them scrolls down, the height is no matter. */
    private static Rectangle reachable(Control control) {
        Rectangle seen = control.getDisplay().map(control.getParent(), null, control.getBounds());
        boolean scrolls = false;
        for (Composite parent = control.getParent(); parent != null; parent = parent.getParent()) {
            Rectangle area = control.getDisplay().map(parent, null, parent.getClientArea());
            if (scrolls || parent instanceof ScrolledComposite around && around.getVerticalBar() != null) {
                scrolls = true;
                area.y = seen.y;
                area.height = seen.height;
            }
            seen = seen.intersection(area);
        }
        return seen;
    }
}
