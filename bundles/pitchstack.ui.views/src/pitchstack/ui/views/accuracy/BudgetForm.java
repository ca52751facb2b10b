// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.accuracy;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Flow;

/** For which setting the budget is asked. */
final class BudgetForm {
    private static final int GAP = 5;
    private static final int LEAST_LETTERS = 12;

    /** What can be asked. */
    enum Ask {
        /** Where the stages stand. */
        HERE("Where the stages stand"),
        /** At a position that is typed or picked. */
        POSITION("At the position"),
        /** Wherever it is worst. */
        WORST("The worst over the travel");

        private final String words;

        Ask(String words) {
            this.words = words;
        }
    }

    private final Combo ask;
    private final Combo position;
    private boolean filling;

    /** @param changed called when something else is asked */
    BudgetForm(Composite parent, int span, Runnable changed) {
        Composite line = Flow.in(parent, span, GAP, false);
        new Label(line, SWT.NONE).setText("For");
        ask = new Combo(line, SWT.READ_ONLY | SWT.DROP_DOWN);
        for (Ask one : Ask.values()) {
            ask.add(one.words);
        }
        ask.select(0);
        ask.setToolTipText("For which setting the budget is worked out. The worst is looked for over all settings"
                + " within the travel that use no barred teeth.");
        Accessibles.name(ask, "Setting of the budget");
        position = new Combo(line, SWT.DROP_DOWN);
        position.setToolTipText("A position, typed or one of the saved targets; the setting is the one the planner"
                + " would give.");
        Accessibles.name(position, "Position");
        position.setLayoutData(Flow.Room.atLeast(LEAST_LETTERS, position));
        position.setVisible(false);
        ask.addListener(SWT.Selection, e -> {
            position.setVisible(ask() == Ask.POSITION);
            changed.run();
        });
        position.addListener(SWT.Modify, e -> {
            if (!filling) {
                changed.run();
            }
        });
    }

    Ask ask() {
        return Ask.values()[Math.max(0, ask.getSelectionIndex())];
    }

    /** What is typed or picked. */
    String position() {
        return position.getText();
    }

    /** Offers the positions of saved targets. */
    void offer(List<String> positions) {
        if (!List.of(position.getItems()).equals(positions)) {
            filling = true;
            String typed = position.getText();
            position.setItems(positions.toArray(String[]::new));
            position.setText(typed);
            filling = false;
        }
    }

    /** @param stopped called when Escape is pressed */
    void onEscape(Runnable stopped) {
        for (Combo field : List.of(ask, position)) {
            field.addListener(SWT.KeyDown, e -> {
                if (e.character == SWT.ESC) {
                    stopped.run();
                }
            });
        }
    }

    void setFocus() {
        ask.setFocus();
    }
}
