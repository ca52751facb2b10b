// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.part.PageBook;
import org.eclipse.ui.part.ViewPart;
import pitchstack.core.check.Finding;
import pitchstack.core.check.Severity;
import pitchstack.edit.Session;
import pitchstack.edit.SessionListener.Change;
import pitchstack.ui.views.axes.AxisSwitch;

/**
 * A view of the axis that is looked at, with undo and redo of its document. It shows its page while the axis is sound;
 * else it says what to open or to mend.
 */
public abstract class AxisView extends ViewPart {
    private PageBook book;
    private Message message;
    private Control page;
    private ActiveSession active;
    private HistoryActions history;
    private AxisSwitch axes;
    private boolean sound;

    /**
     * Makes what is shown of a sound axis. Called once, before all else.
     *
     * @param parent where it stands
     */
    protected abstract Control createPage(Composite parent);

    /** Shows the axis that a session looks at; it is sound, and was not shown before. */
    protected abstract void show(Session session);

    /** Takes up a change of what is shown, which is still the same axis, and sound. */
    protected abstract void refresh(Change change);

    /** Ends all work until something is shown again. */
    protected abstract void rest();

    /** What is said while no stack is open. */
    protected abstract String invitation();

    /** What is said, with a colon at its end, before the error of an axis that is not sound. */
    protected abstract String obstacle(Session session);

    /** Puts the focus on the page. */
    protected abstract void focusPage();

    @Override
    public final void createPartControl(Composite parent) {
        book = new PageBook(parent, SWT.NONE);
        message = new Message(book);
        page = createPage(book);
        active = new ActiveSession(getSite().getPage(), this::switched, this::changed);
        history = new HistoryActions(active, getViewSite().getActionBars());
        axes = new AxisSwitch(getViewSite().getActionBars());
        switched();
    }

    @Override
    public void dispose() {
        if (active != null) {
            active.dispose();
        }
        super.dispose();
    }

    @Override
    public final void setFocus() {
        if (sound) {
            focusPage();
        } else {
            message.control().setFocus();
        }
    }

    @Override
    public <T> T getAdapter(Class<T> type) {
        T beside = BesideEditor.adapter(type, getSite().getPage());
        return beside != null ? beside : super.getAdapter(type);
    }

    /** The session in front; empty while no stack is open. */
    protected final Optional<Session> session() {
        return active == null ? Optional.empty() : active.session();
    }

    /**
     * Whether the page is shown, of an axis that is still sound: a selection may change before this view is told what was
     * changed in the document.
     */
    protected final boolean isShowing() {
        return sound && session().filter(session -> !session.analysis().hasErrors()).isPresent();
    }

    private void switched() {
        history.update();
        setContentDescription(axes.update(active.session()));
        Session session = active.session().orElse(null);
        sound = session != null && !session.analysis().hasErrors();
        if (sound) {
            book.showPage(page);
            show(session);
            return;
        }
        rest();
        message.say(session == null ? invitation() : obstacle(session) + "\n\n" + firstError(session).sentence()
                + "\n\nThe Findings view lists all there is, and leads to it.");
        book.showPage(message.control());
    }

    private static Finding firstError(Session session) {
        return session.analysis().findings().stream().filter(f -> f.severity() == Severity.ERROR).findFirst().orElseThrow();
    }

    private void changed(Change change) {
        history.update();
        boolean stillSound = !active.session().orElseThrow().analysis().hasErrors();
        if (change == Change.AXIS || stillSound != sound || !stillSound) {
            switched();
        } else {
            setContentDescription(axes.update(active.session()));
            refresh(change);
        }
    }
}
