// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.recovery;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.ISchedulingRule;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.widgets.Display;
import pitchstack.edit.Session;
import pitchstack.edit.SessionListener;
import pitchstack.edit.SessionListener.Change;
import pitchstack.model.Positioner;

/** Keeps the unsaved work of one document. Used from the user interface thread; the file is written in another. */
final class Keeper implements ISchedulingRule {
    private final Session session;
    private final Display display;
    private final UnsavedCopies copies;
    private final int delayMs;
    private final SessionListener listener = this::changed;
    /** Touched by the jobs alone, which run one after the other. */
    private Optional<Path> copy = Optional.empty();
    /** The same. */
    private Optional<Path> taken;
    private boolean waiting;
    private volatile boolean ended;
    private boolean complained;

    /**
     * Begins to keep.
     *
     * @param taken a copy that another program left and that belongs to the document now, until there is a newer one
     * @param delayMs how long after a change a copy is written
     */
    Keeper(Session session, Display display, UnsavedCopies copies, Optional<Path> taken, int delayMs) {
        this.taken = taken;
        this.session = session;
        this.display = display;
        this.copies = copies;
        this.delayMs = delayMs;
        session.addListener(listener);
        changed(Change.DOCUMENT);
    }

    /** The file of a document; empty while it is in none. */
    static Optional<Path> file(Session session) {
        URI uri = session.document().getURI();
        return uri != null && uri.isFile() ? Optional.of(Path.of(uri.toFileString())) : Optional.empty();
    }

    /** Ends with the document: it was closed, saved or not, as the person wanted. */
    void end() {
        ended = true;
        session.removeListener(listener);
        // At once, not in a job: when the program ends no job is begun any more.
        Job.getJobManager().beginRule(this, null);
        try {
            dropNow();
        } finally {
            Job.getJobManager().endRule(this);
        }
    }

    private void changed(Change change) {
        if (change != Change.DOCUMENT && change != Change.FILE) {
            return;
        }
        if (!session.isDirty()) {
            drop();
        } else if (!waiting) {
            waiting = true;
            display.timerExec(delayMs, this::keep);
        }
    }

    private void keep() {
        waiting = false;
        if (ended || !session.isDirty()) {
            return;
        }
        Positioner work = EcoreUtil.copy(session.positioner());
        Optional<Path> file = file(session);
        schedule("Keep unsaved work", monitor -> {
            if (!ended) {
                write(work, file);
            }
        });
    }

    private void write(Positioner work, Optional<Path> file) {
        try {
            copies.keep(work, place(file), file);
            dropTaken();
        } catch (IOException first) {
            try {
                copy = Optional.of(copies.apart());
                copies.keep(work, copy.get(), file);
                dropTaken();
            } catch (IOException second) {
                complain(second);
            }
        }
    }

    /** Beside the file; a copy that was written elsewhere before the document had a file is dropped when it is saved. */
    private Path place(Optional<Path> file) throws IOException {
        if (copy.isEmpty()) {
            copy = Optional.of(file.isPresent() ? UnsavedCopies.beside(file.get(), Owner.self())
                    : copies.apart());
        }
        return copy.get();
    }

    private void complain(IOException why) {
        if (!complained) {
            complained = true;
            ILog.of(Keeper.class).error("Unsaved work cannot be kept; save it yourself from time to time.", why);
        }
    }

    private void drop() {
        schedule("Drop a copy of unsaved work", monitor -> dropNow());
    }

    private void dropTaken() {
        taken.ifPresent(copies::drop);
        taken = Optional.empty();
    }

    private void dropNow() {
        dropTaken();
        copy.ifPresent(copies::drop);
        copy = Optional.empty();
    }

    /** One after the other, so that a copy that is dropped is not written again by work begun before. */
    private void schedule(String name, ICoreRunnable work) {
        Job job = Job.createSystem(name, work);
        job.setRule(this);
        job.schedule();
    }

    @Override
    public boolean contains(ISchedulingRule rule) {
        return rule == this;
    }

    @Override
    public boolean isConflicting(ISchedulingRule rule) {
        return rule == this;
    }
}
