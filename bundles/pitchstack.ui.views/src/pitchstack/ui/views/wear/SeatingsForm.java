// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Chosen;
import pitchstack.ui.views.Flow;

/** What is counted, how often it is run, and by how much the base row would be shifted. */
final class SeatingsForm {
    private static final int GAP = 5;
    private static final int MOST = 10_000;
    private static final int FIELD_LETTERS = 6;
    private static final int LEAST_LETTERS = 30;

    private final Runnable listed;
    private final Combo order;
    private final Text times;
    private final Text shift;
    private Text typed;

    /**
     * @param listed called when something else shall be counted
     * @param scaled called when only the number of runs or the shift changes
     */
    SeatingsForm(Composite parent, Runnable listed, Runnable scaled) {
        this.listed = listed;
        Composite line = Flow.in(parent, 1, GAP, false);
        label(line, "Count");
        order = new Combo(line, SWT.READ_ONLY | SWT.DROP_DOWN);
        order.setItems(SeatingsOrder.titles());
        order.select(0);
        Chosen.tell(order, "The settings whose seatings are counted, beginning where the stages stand now.");
        Accessibles.name(order, "Count");
        order.setLayoutData(Flow.Room.atLeast(LEAST_LETTERS, order));
        label(line, "done");
        times = field(line, "Times", "1", "How many times the list is run, such as a month of days.");
        label(line, "times, base row shifted");
        shift = field(line, "Shift of the base row in teeth", "0", "By how many teeth the base row of"
                + " the chosen line would be shifted under its rider, to see how that spreads the seatings; 0 for not at all.");
        label(line, "teeth");
        order.addListener(SWT.Selection, e -> {
            showTyped();
            listed.run();
        });
        times.addListener(SWT.Modify, e -> scaled.run());
        shift.addListener(SWT.Modify, e -> scaled.run());
    }

    private static void label(Composite parent, String text) {
        new Label(parent, SWT.NONE).setText(text);
    }

    private static Text field(Composite parent, String name, String text, String tip) {
        Text field = new Text(parent, SWT.BORDER | SWT.SINGLE);
        field.setText(text);
        field.setToolTipText(tip);
        Accessibles.name(field, name);
        field.setLayoutData(Flow.Room.of(FIELD_LETTERS, field));
        return field;
    }

    /** Makes the field for typed settings beside what shows their seatings; it is seen only while they are counted. */
    void typedIn(SashForm sash) {
        typed = new Text(sash, SWT.MULTI | SWT.BORDER | SWT.V_SCROLL);
        typed.setToolTipText("One setting a line: an index for each stage, lowest stage first, such as 48 0");
        Accessibles.name(typed, "Settings, one a line");
        typed.setVisible(false);
        typed.addListener(SWT.Modify, e -> listed.run());
    }

    private void showTyped() {
        boolean shown = order() == SeatingsOrder.TYPED;
        typed.setVisible(shown);
        typed.getParent().layout();
        if (shown) {
            typed.setFocus();
        }
    }

    void setFocus() {
        order.setFocus();
    }

    SeatingsOrder order() {
        return SeatingsOrder.values()[Math.max(0, order.getSelectionIndex())];
    }

    String typed() {
        return typed.getText();
    }

    /** How many runs; 1 while nothing better is typed. */
    int times() {
        return number(times, 1, 1);
    }

    /** By how many teeth the base row is shifted; 0 while nothing better is typed. */
    int shift() {
        return number(shift, -MOST, 0);
    }

    /** What is wrong with the numbers; empty if nothing is. */
    String problem() {
        if (number(times, 1, -1) < 0) {
            return "“" + times.getText() + "” is not allowed; give how many times as a whole number from 1 to " + MOST + ".";
        }
        return number(shift, -MOST, MOST + 1) <= MOST ? "" : "“" + shift.getText() + "” is not allowed; give the shift as a"
                + " whole number of teeth from -" + MOST + " to " + MOST + ".";
    }

    private static int number(Text field, int least, int otherwise) {
        try {
            int number = Integer.parseInt(field.getText().strip().replace('−', '-'));
            return number >= least && number <= MOST ? number : otherwise;
        } catch (NumberFormatException e) {
            return otherwise;
        }
    }
}
