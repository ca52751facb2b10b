// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests;

import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.Accessible;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleControlListener;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.swt.widgets.Tree;

/** The names by which a screen reader calls what is on the screen. */
public final class Names {
    private Names() {
    }

    /** Visible controls below a composite that a person can use, or that show something, and that have no name. */
    public static List<String> missing(Composite root) {
        List<String> found = new ArrayList<>();
        for (Control control : root.getChildren()) {
            if (control.isVisible() && needsName(control) && !isFrame(control) && of(control).isBlank()) {
                found.add(path(control));
            }
            if (control instanceof Composite inner && control.isVisible() && !isFrame(control)) {
                found.addAll(missing(inner));
            }
        }
        return found;
    }

    private static boolean needsName(Control control) {
        return control instanceof Text || control instanceof Button || control instanceof Combo || control instanceof Table
                || control instanceof Tree || control instanceof Spinner || control instanceof StyledText
                || control instanceof Link || control instanceof ToolBar
                || control instanceof Canvas && control.getListeners(SWT.Paint).length > 0
                        && !(control instanceof CLabel) && !(control instanceof ScrolledComposite);
    }

    /** What the platform draws around tool bars: nothing to be used. */
    private static boolean isFrame(Control control) {
        return control.getClass().getSimpleName().equals("ImageBasedFrame");
    }

    private static String path(Control control) {
        StringBuilder path = new StringBuilder(control.getClass().getSimpleName());
        for (Composite at = control.getParent(); at != null; at = at.getParent()) {
            path.insert(0, at.getClass().getSimpleName() + " > ");
        }
        return path + " " + control.getBounds();
    }

    /** What a control says it is called, else its own words, else those of the label before it. */
    public static String of(Control control) {
        String told = told(control.getAccessible(), ACC.CHILDID_SELF);
        if (!told.isBlank()) {
            return told;
        }
        String own = control instanceof Button button ? button.getText() + text(button.getToolTipText())
                : control instanceof Link link ? link.getText() : control instanceof ToolBar bar ? items(bar) : "";
        return own.isBlank() ? before(control) : own;
    }

    /** The names of all items, or nothing where one has none. */
    private static String items(ToolBar bar) {
        List<String> names = Arrays.stream(bar.getItems()).filter(item -> item.getControl() == null)
                .filter(item -> (item.getStyle() & SWT.SEPARATOR) == 0)
                .map(Names::of).toList();
        return names.stream().anyMatch(String::isBlank) ? "" : "tools " + String.join(", ", names);
    }

    private static String of(ToolItem item) {
        return text(item.getText()) + text(item.getToolTipText());
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }

    private static String before(Control control) {
        List<Control> siblings = List.of(control.getParent().getChildren());
        int at = siblings.indexOf(control);
        return at > 0 && siblings.get(at - 1) instanceof Label label ? label.getText() : "";
    }

    /** What the listeners of an accessible object answer for one of its children; they cannot be asked in another way. */
    public static String told(Accessible accessible, int child) {
        AccessibleEvent event = new AccessibleEvent(accessible);
        event.childID = child;
        for (Object listener : listeners(accessible, "accessibleListeners")) {
            ((AccessibleListener) listener).getName(event);
        }
        return text(event.result);
    }

    /** The ids of the children of one child of an accessible object, or of itself. */
    public static List<Integer> children(Accessible accessible, int of) {
        AccessibleControlEvent event = new AccessibleControlEvent(accessible);
        event.childID = of;
        for (Object listener : listeners(accessible, "accessibleControlListeners")) {
            ((AccessibleControlListener) listener).getChildren(event);
        }
        return event.children == null ? List.of() : Arrays.stream(event.children).map(Integer.class::cast).toList();
    }

    private static List<?> listeners(Accessible accessible, String name) {
        try {
            Field field = Accessible.class.getDeclaredField(name);
            field.setAccessible(true);
            return field.get(accessible) instanceof List<?> list ? list : List.of();
        } catch (ReflectiveOperationException e) {
            throw new AssertionError("The toolkit keeps its listeners elsewhere now.", e);
        }
    }
}
