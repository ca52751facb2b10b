// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.recovery;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Queue;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchListener;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.IWorkbenchWindow;
import pitchstack.edit.Differences;
import pitchstack.edit.Session;
import pitchstack.edit.TakeOver;
import pitchstack.model.Positioner;
import pitchstack.ui.views.Commands;

/**
 * Keeps the unsaved work of all documents of a window, and offers what a crash has left: at the start, and when a file is
 * opened that has some. Closing a document, saved or not, ends its copy.
 */
public final class Recovery implements IPartListener2 {
    /** Soon enough to lose little, late enough not to write after every tooth of a row of changes. */
    private static final int DELAY_MS = 3000;
    private static final String TITLE = "Unsaved work was found";

    private final IWorkbenchWindow window;
    private final UnsavedCopies copies = new UnsavedCopies();
    private final Map<Session, Keeper> keepers = new HashMap<>();
    private final Queue<Runnable> questions = new ArrayDeque<>();
    private boolean asking;

    private Recovery(IWorkbenchWindow window) {
        this.window = window;
    }

    /**
     * Begins to watch a window that is open, unless it is watched already, and offers what was left over.
     *
     * @return whether anything was
     */
    public static boolean begin(IWorkbenchWindow window) {
        Recovery recovery = (Recovery) window.getShell().getData(Recovery.class.getName());
        if (recovery == null) {
            recovery = new Recovery(window);
            recovery.watch();
        }
        window.getShell().getDisplay().asyncExec(recovery::offerAll);
        return !recovery.copies.all().isEmpty();
    }

    private void watch() {
        window.getShell().setData(Recovery.class.getName(), this);
        IWorkbenchPage page = window.getActivePage();
        page.addPartListener(this);
        for (IEditorReference reference : page.getEditorReferences()) {
            partOpened(reference);
        }
        window.getWorkbench().addWorkbenchListener(new End());
    }

    @Override
    public void partOpened(IWorkbenchPartReference reference) {
        IWorkbenchPart part = reference.getPart(false);
        Session session = part instanceof IEditorPart ? part.getAdapter(Session.class) : null;
        if (session != null && !keepers.containsKey(session)) {
            keepers.put(session, null);
            Optional<Leftover> leftover = Keeper.file(session).flatMap(copies::of);
            if (leftover.isEmpty()) {
                keep(session, Optional.empty());
            } else {
                window.getShell().getDisplay().asyncExec(() -> inTurn(() -> offer(session, leftover.get())));
            }
        }
    }

    @Override
    public void partClosed(IWorkbenchPartReference reference) {
        IWorkbenchPart part = reference.getPart(false);
        Session session = part instanceof IEditorPart ? part.getAdapter(Session.class) : null;
        Keeper keeper = session == null ? null : keepers.remove(session);
        if (keeper != null) {
            keeper.end();
        }
    }

    private void keep(Session session, Optional<Path> copy) {
        Keeper before = keepers.put(session, new Keeper(session, window.getShell().getDisplay(), copies, copy, DELAY_MS));
        if (before != null) {
            before.end();
        }
    }

    private void offerAll() {
        for (Leftover leftover : copies.all()) {
            if (leftover.file().isPresent()) {
                // Opening the file offers it.
                new Commands(window).run(Commands.OPEN_FILE, Map.of(Commands.PATH, leftover.file().get().toString()));
            } else {
                new Commands(window).run(Commands.NEW, Map.of());
                IEditorPart editor = window.getActivePage().getActiveEditor();
                if (editor != null) {
                    inTurn(() -> {
                        offer(editor.getAdapter(Session.class), leftover);
                        closeIfUnused(editor);
                    });
                }
            }
        }
    }

    /** Asks one question after another: what comes up while one is open waits for its answer. */
    private void inTurn(Runnable question) {
        questions.add(question);
        if (!asking) {
            asking = true;
            try {
                while (!questions.isEmpty()) {
                    questions.remove().run();
                }
            } finally {
                asking = false;
            }
        }
    }

    private static void closeIfUnused(IEditorPart editor) {
        if (!editor.isDirty()) {
            editor.getSite().getPage().closeEditor(editor, false);
        }
    }

    private void offer(Session session, Leftover leftover) {
        if (!keepers.containsKey(session)) {
            return;
        }
        Optional<Positioner> work = leftover.positioner();
        if (work.isEmpty()) {
            MessageDialog.openError(window.getShell(), TITLE, "Unsaved work was kept in " + leftover.copy()
                    + ", but it cannot be read. The file itself is as it was saved last.");
        } else if (!Differences.between(session.positioner(), work.get()).isEmpty()
                && recover(leftover.question(work.get(), session.positioner()))) {
            session.run(new TakeOver(session.positioner(), work.get(), "Recover unsaved work"));
        }
        // Where nothing was recovered the document is as saved, and its keeper drops the copy.
        keep(session, work.map(any -> leftover.copy()));
    }

    /** Closing the dialog recovers, since nothing is lost by that. */
    private boolean recover(String question) {
        return MessageDialog.open(MessageDialog.QUESTION, window.getShell(), TITLE, question, SWT.NONE, "&Recover",
                "&Discard") != 1;
    }

    /** The program ends as it should: what was not saved was not wanted. */
    private final class End implements IWorkbenchListener {
        @Override
        public boolean preShutdown(IWorkbench workbench, boolean forced) {
            return true;
        }

        @Override
        public void postShutdown(IWorkbench workbench) {
            keepers.values().stream().filter(Objects::nonNull).forEach(Keeper::end);
        }
    }
}
