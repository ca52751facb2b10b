// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import java.util.HashMap;
import java.util.Map;
import org.eclipse.e4.core.contexts.IEclipseContext;
import org.eclipse.emf.common.util.URI;
import org.eclipse.ui.services.IServiceLocator;
import pitchstack.edit.Session;

/** What was last typed for each axis of each document, kept while the program runs. */
final class Drafts {
    private final Map<Key, Question> questions = new HashMap<>();

    /** A document by its place, so that it is known again when it is reopened, or by itself while it has none. */
    private record Key(Object document, int axis) {
        static Key of(Session session) {
            URI place = session.document().getURI();
            return new Key(place == null ? session : place, session.positioner().getAxes().indexOf(session.axis()));
        }
    }

    /**
     * The drafts of the running program.
     *
     * @param workbench the workbench, whose context holds them
     */
    static Drafts of(IServiceLocator workbench) {
        IEclipseContext context = workbench.getService(IEclipseContext.class);
        Drafts known = context.get(Drafts.class);
        if (known != null) {
            return known;
        }
        Drafts drafts = new Drafts();
        context.set(Drafts.class, drafts);
        return drafts;
    }

    /** What was last typed for the axis that a session looks at. */
    Question recall(Session session) {
        return questions.getOrDefault(Key.of(session), Question.NONE);
    }

    /** Keeps what is typed for the axis that a session looks at. */
    void keep(Session session, Question question) {
        questions.put(Key.of(session), question);
    }
}
