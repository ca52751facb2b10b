// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import java.util.Optional;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;
import pitchstack.edit.Session;
import pitchstack.edit.SessionListener;

/**
 * The session of the editor in front. Follows the editors of one page, and passes on what the session in front tells;
 * used from the user interface thread.
 */
public final class ActiveSession {
    private final IWorkbenchPage page;
    private final Runnable switched;
    private final SessionListener listener;
    private final IPartListener2 editors = new Editors();
    private Session session;
    private boolean ended;

    /**
     * Begins to follow; the session that is in front already is not told of, ask {@link #session()}.
     *
     * @param page the page whose editors to follow
     * @param switched called after another session, or none, has come to the front
     * @param changed called after each change of the session in front
     */
    public ActiveSession(IWorkbenchPage page, Runnable switched, SessionListener changed) {
        this.page = page;
        this.switched = switched;
        this.listener = change -> {
            if (!ended) {
                changed.changed(change);
            }
        };
        page.addPartListener(editors);
        take(inFront());
    }

    /** The session in front; empty while no stack is open. */
    public Optional<Session> session() {
        return Optional.ofNullable(session);
    }

    /** Ends following; nothing is told any more, not even of an event that is on its way. */
    public void dispose() {
        ended = true;
        page.removePartListener(editors);
        take(null);
    }

    private Session inFront() {
        IEditorPart editor = page.getActiveEditor();
        return editor == null ? null : editor.getAdapter(Session.class);
    }

    private void follow() {
        if (ended) {
            return;
        }
        Session now = inFront();
        if (now != session) {
            take(now);
            switched.run();
        }
    }

    private void take(Session next) {
        if (session != null) {
            session.removeListener(listener);
        }
        session = next;
        if (session != null) {
            session.addListener(listener);
        }
    }

    /** Any change of parts may bring another editor to the front; asking is cheap. */
    private final class Editors implements IPartListener2 {
        @Override
        public void partActivated(IWorkbenchPartReference part) {
            follow();
        }

        @Override
        public void partBroughtToTop(IWorkbenchPartReference part) {
            follow();
        }

        @Override
        public void partClosed(IWorkbenchPartReference part) {
            follow();
        }

        @Override
        public void partInputChanged(IWorkbenchPartReference part) {
            follow();
        }
    }
}
