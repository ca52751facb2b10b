// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.properties;

import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.ToolBarManager;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.part.PageBook;
import org.eclipse.ui.views.properties.IPropertySheetEntry;
import org.eclipse.ui.views.properties.PropertySheetPage;
import org.eclipse.ui.views.properties.PropertySheetSorter;
import pitchstack.edit.SessionListener.Change;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.ActiveSession;
import pitchstack.ui.views.HistoryActions;
import pitchstack.ui.views.Message;

/** The page of the Properties view: in the order the properties are given, and always as the document stands. */
final class ElementSheetPage extends PropertySheetPage {
    private PageBook book;
    private Message message;
    private ActiveSession active;
    private HistoryActions history;
    private boolean outdated;

    ElementSheetPage() {
        setSorter(new GivenOrder());
    }

    @Override
    public void createControl(Composite parent) {
        book = new PageBook(parent, SWT.NONE);
        super.createControl(book);
        Accessibles.name(super.getControl(), "Properties");
        message = new Message(book);
        message.say("Select a stage, a row, marked teeth or a target, and its facts are shown here to read and to change.");
        showWhatThereIs();
        active = new ActiveSession(getSite().getPage(), this::updateHistory, this::changed);
        updateHistory();
    }

    /** Takes undo and redo from the cells, which have none, for the document. */
    @Override
    public void setActionBars(IActionBars bars) {
        super.setActionBars(bars);
        history = new HistoryActions(active, bars);
    }

    private void updateHistory() {
        if (history != null) {
            history.update();
        }
    }

    @Override
    public Control getControl() {
        return book;
    }

    @Override
    public void selectionChanged(IWorkbenchPart part, ISelection selection) {
        super.selectionChanged(part, selection);
        showWhatThereIs();
    }

    @Override
    public void refresh() {
        super.refresh();
        showWhatThereIs();
    }

    private void showWhatThereIs() {
        Tree facts = (Tree) super.getControl();
        if (facts != null) {
            book.showPage(facts.getItemCount() > 0 ? facts : message.control());
        }
    }

    @Override
    public void setFocus() {
        if (super.getControl().isVisible()) {
            super.setFocus();
        } else {
            message.control().setFocus();
        }
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
        updateHistory();
        if (change != Change.DOCUMENT || outdated) {
            return;
        }
        outdated = true;
        getControl().getDisplay().asyncExec(() -> {
            outdated = false;
            if (!book.isDisposed()) {
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
