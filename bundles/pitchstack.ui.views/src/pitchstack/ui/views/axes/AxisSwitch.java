// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.axes;

import java.util.List;
import java.util.Optional;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuCreator;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.ui.IActionBars;
import pitchstack.edit.Session;
import pitchstack.model.Axis;

/** A button in the heading of a view that lists the axes; it is there only where a document has several. */
public final class AxisSwitch {
    private static final String ID = "pitchstack.ui.views.axes.switch";

    private final IActionBars bars;
    private final Action button = new Button();
    private Optional<Session> session = Optional.empty();

    /** @param bars of the view */
    public AxisSwitch(IActionBars bars) {
        this.bars = bars;
    }

    /**
     * Takes up another session, another axis, or a change.
     *
     * @return which axis it is, in a few words; empty where there is only one
     */
    public String update(Optional<Session> now) {
        session = now;
        List<Axis> axes = axes();
        IToolBarManager bar = bars.getToolBarManager();
        boolean shown = bar.find(ID) != null;
        if (axes.size() > 1 != shown) {
            if (shown) {
                bar.remove(ID);
            } else {
                bar.add(button);
            }
            bar.update(true);
            bars.updateActionBars();
        }
        return axes.size() < 2 ? "" : "Axis " + AxisSteps.title(session.get()) + ", " + (axes.indexOf(session.get().axis()) + 1)
                + " of " + axes.size();
    }

    private List<Axis> axes() {
        return session.map(found -> (List<Axis>) found.positioner().getAxes()).orElse(List.of());
    }

    /** A press goes to the next axis, its arrow lists all. */
    private final class Button extends Action implements IMenuCreator {
        private Menu menu;

        Button() {
            super("Axis", AS_DROP_DOWN_MENU);
            setId(ID);
            setToolTipText("Look at the next axis (Alt+Page Down), or choose one");
            setImageDescriptor(ImageDescriptor.createFromURL(AxisSwitch.class.getResource("/icons/axes.svg")));
            setMenuCreator(this);
        }

        @Override
        public void run() {
            session.ifPresent(found -> AxisSteps.look(found, 1));
        }

        @Override
        public Menu getMenu(Control parent) {
            dispose();
            menu = new Menu(parent);
            for (Axis axis : axes()) {
                Action choice = new Action(axis.getName() == null ? "without a name" : axis.getName(), IAction.AS_RADIO_BUTTON) {
                    @Override
                    public void run() {
                        if (isChecked()) {
                            session.ifPresent(found -> found.look(axis));
                        }
                    }
                };
                choice.setChecked(axis == session.orElseThrow().axis());
                new ActionContributionItem(choice).fill(menu, SWT.DEFAULT);
            }
            return menu;
        }

        @Override
        public Menu getMenu(Menu parent) {
            return null;
        }

        @Override
        public void dispose() {
            if (menu != null) {
                menu.dispose();
                menu = null;
            }
        }
    }
}
