// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.properties;

import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.ToolBarManager;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.views.properties.IPropertySheetEntry;
import org.eclipse.ui.views.properties.PropertySheetPage;
import org.eclipse.ui.views.properties.PropertySheetSorter;
import pitchstack.edit.SessionListener.Change;
import pitchstack.ui.views.ActiveSession;

/** The page of the Properties view: in the order the properties are given, and always as the document stands. */
final class ElementSheetPage extends PropertySheetPage {
    private ActiveSession active;
    private boolean outdated;

    ElementSheetPage() {
        setSorter(new GivenOrder());
    }

    @Override
    public void createControl(Composite parent) {
        super.createControl(parent);
        active = new ActiveSession(getSite().getPage(), () -> { }, this::changed);
    }

    @Override
    public void dispose() {
        if (active != null) {
            active.dispose();
        }
        super.dispose();
    }

    /** Nothing here is for experts and nothing has a default, so the tools that say so are left out. */
    @Override
    public void makeContributions(IMenuManager menu, IToolBarManager tools, IStatusLineManager status) {
        super.makeContributions(new MenuManager(), new ToolBarManager(), status);
    }

    /** Waits for the event to end: the change may come from a cell that is still closing. */
    private void changed(Change change) {
        if (change != Change.DOCUMENT || outdated) {
            return;
        }
        outdated = true;
        getControl().getDisplay().asyncExec(() -> {
            outdated = false;
            Control control = getControl();
            if (control != null && !control.isDisposed()) {
                refresh();
            }
        });
    }

    private static final class GivenOrder extends PropertySheetSorter {
        @Override
        public int compare(IPropertySheetEntry a, IPropertySheetEntry b) {
            return 0;
        }

        @Override
        public int compareCategories(String a, String b) {
            return 0;
        }
    }
}
