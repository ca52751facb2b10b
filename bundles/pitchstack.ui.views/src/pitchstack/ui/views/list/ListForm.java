// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import java.util.Arrays;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import pitchstack.core.plan.StopOrder;
import pitchstack.core.plan.WornPolicy;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Chosen;
import pitchstack.ui.views.SettingText;

/** How the list is planned: its order, and what is done about worn teeth. */
final class ListForm {
    /**
     * What is chosen.
     *
     * @param order how the list is planned
     * @param worn when a setting over worn teeth may be offered
     */
    record Choice(StopOrder order, WornPolicy worn) {
        /** What is chosen while a person has not chosen: it needs no thought and costs no more than one after another. */
        static final Choice USUAL = new Choice(StopOrder.GIVEN, WornPolicy.AVOID);
    }

    private final Combo order;
    private final Combo worn;

    ListForm(Composite parent) {
        Composite line = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(line);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        order = combo(line, "Order", Arrays.stream(StopOrder.values()).map(ListForm::words).toArray(String[]::new),
                "Whether each target is reached from where the stages stand, or all are set one after another, and then "
                        + "in which order and with which settings.");
        worn = combo(line, "Worn teeth", Arrays.stream(WornPolicy.values()).map(ListForm::words).toArray(String[]::new),
                SettingText.WORN_CHOICES);
        show(Choice.USUAL);
    }

    private static Combo combo(Composite parent, String name, String[] items, String tooltip) {
        new Label(parent, SWT.NONE).setText(name);
        Combo combo = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
        combo.setItems(items);
        Chosen.tell(combo, tooltip);
        Accessibles.name(combo, name);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(combo);
        return combo;
    }

    private static String words(StopOrder order) {
        return switch (order) {
            case EACH_FROM_START -> "Each from where the stages stand";
            case ONE_BY_ONE -> "One after another";
            case GIVEN -> "Cheapest in this order";
            case FREE -> "Cheapest in any order";
        };
    }

    private static String words(WornPolicy policy) {
        return switch (policy) {
            case AVOID -> "Avoid worn teeth";
            case ALLOW -> "Allow worn teeth";
            case NEVER -> "Never use worn teeth";
        };
    }

    /** @param listener called when a person chooses */
    void onChoice(Runnable listener) {
        order.addListener(SWT.Selection, e -> listener.run());
        worn.addListener(SWT.Selection, e -> listener.run());
    }

    /** What is chosen now. */
    Choice choice() {
        return new Choice(StopOrder.values()[order.getSelectionIndex()], WornPolicy.values()[worn.getSelectionIndex()]);
    }

    /** Shows a choice, without telling. */
    void show(Choice choice) {
        order.select(choice.order().ordinal());
        worn.select(choice.worn().ordinal());
    }
}
