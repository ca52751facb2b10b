// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.findings;

import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IWorkbenchCommandConstants;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.PageBook;
import org.eclipse.ui.part.ViewPart;
import pitchstack.edit.Session;
import pitchstack.edit.SessionListener.Change;
import pitchstack.ui.views.ActiveSession;
import pitchstack.ui.views.BesideEditor;
import pitchstack.ui.views.HistoryActions;
import pitchstack.ui.views.Message;
import pitchstack.ui.views.Reveal;
import pitchstack.ui.views.TableMenu;

/** The Findings view. */
public final class FindingsView extends ViewPart {
    /** Id of this view. */
    public static final String ID = "pitchstack.ui.views.findings";
    private static final String NAME = "Findings";

    private PageBook book;
    private Message message;
    private FindingsTable table;
    private ActiveSession active;
    private HistoryActions history;

    @Override
    public void createPartControl(Composite parent) {
        book = new PageBook(parent, SWT.NONE);
        message = new Message(book);
        table = new FindingsTable(book);
        table.onOpen(this::reveal);
        addContextMenu();
        getSite().getService(IHandlerService.class).activateHandler(IWorkbenchCommandConstants.EDIT_COPY, new CopyHandler());
        active = new ActiveSession(getSite().getPage(), this::refresh, this::changed);
        history = new HistoryActions(active, getViewSite().getActionBars());
        refresh();
    }

    private void addContextMenu() {
        new TableMenu(table.table()).add("Show in &Drawing", SWT.CR, () -> table.chosen().ifPresent(this::reveal));
    }

    @Override
    public void dispose() {
        if (active != null) {
            active.dispose();
        }
        super.dispose();
    }

    @Override
    public void setFocus() {
        if (table.control().isVisible()) {
            table.table().setFocus();
        } else {
            message.control().setFocus();
        }
    }

    @Override
    public <T> T getAdapter(Class<T> type) {
        T beside = BesideEditor.adapter(type, getSite().getPage());
        return beside != null ? beside : super.getAdapter(type);
    }

    private void changed(Change change) {
        if (change == Change.DOCUMENT) {
            refresh();
        }
    }

    private void refresh() {
        history.update();
        Session session = active.session().orElse(null);
        List<Found> all = session == null ? List.of() : Found.in(session);
        setPartName(all.isEmpty() ? NAME : NAME + " (" + all.size() + ")");
        setTitleToolTip(all.isEmpty() ? NAME : NAME + ": " + Found.count(all));
        table.show(all);
        if (all.isEmpty()) {
            message.say(session == null ? "Open a stack, and what its checks find is listed here." : passed(session));
        }
        book.showPage(all.isEmpty() ? message.control() : table.control());
    }

    /** Without a wanted step there is no check of how fine a stack is. */
    private static String passed(Session session) {
        boolean fine = session.positioner().getAxes().stream()
                .allMatch(axis -> session.analysis(axis).spec().wantedStep().isPresent());
        return "No findings: every check of this stack is passed. What is wrong, or will disappoint, would be listed here."
                + (fine ? "" : " No finest step is asked for, so nothing checks how fine it is: Coverage shows what it reaches, and"
                        + " among the properties of the axis a step can be asked for.");
    }

    private void reveal(Found found) {
        active.session().ifPresent(s -> Reveal.show(getSite().getPage(), s, found.axis(), found.element()));
    }

    private void copy() {
        String lines = table.chosenAll().stream().map(Found::line).collect(Collectors.joining(System.lineSeparator()));
        if (!lines.isEmpty()) {
            Clipboard clipboard = new Clipboard(book.getDisplay());
            clipboard.setContents(new Object[] {lines}, new Transfer[] {TextTransfer.getInstance()});
            clipboard.dispose();
        }
    }

    private final class CopyHandler extends AbstractHandler {
        @Override
        public Object execute(ExecutionEvent event) {
            copy();
            return null;
        }
    }
}
