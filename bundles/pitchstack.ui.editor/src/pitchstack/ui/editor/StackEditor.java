// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IWorkbenchActionConstants;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.contexts.IContextService;
import org.eclipse.ui.part.EditorPart;
import org.eclipse.ui.views.contentoutline.IContentOutlinePage;
import pitchstack.edit.Session;
import pitchstack.edit.SessionListener;
import pitchstack.model.file.StackFileException;
import pitchstack.ui.editor.files.DiskFile;
import pitchstack.ui.editor.files.FileInput;
import pitchstack.ui.editor.files.RecentFiles;
import pitchstack.ui.editor.files.Saving;
import pitchstack.ui.editor.files.Shop;
import pitchstack.ui.editor.files.UntitledInput;
import pitchstack.ui.editor.parts.HistoryCommandStack;
import pitchstack.ui.editor.parts.StopMark;

/** The editor of one document. */
public final class StackEditor extends EditorPart {
    /** The id of this editor. */
    public static final String ID = "pitchstack.ui.editor.stack";
    /** The context in which the keys of its commands hold. */
    static final String CONTEXT = "pitchstack.ui.editor.context";
    /** What may turn actions and the mark of unsaved work on or off; a step of a drag does not. */
    private static final Set<SessionListener.Change> ENABLING = EnumSet.of(SessionListener.Change.DOCUMENT,
            SessionListener.Change.AXIS, SessionListener.Change.FILE);

    private final SessionListener listener = this::changed;
    private Session session;
    private HistoryCommandStack history;
    private EditorActions actions;
    private StackPage page;
    private Optional<DiskFile> file = Optional.empty();

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
        session = session(input);
        session.showFractions(Shop.get().fractions());
        session.addListener(listener);
        history = new HistoryCommandStack(session);
        actions = new EditorActions(this);
    }

    private Session session(IEditorInput input) throws PartInitException {
        if (input instanceof UntitledInput untitled) {
            return new Session(untitled.document(), StackEditor::log);
        }
        if (!(input instanceof FileInput known)) {
            throw new PartInitException("This editor opens files, not " + input.getName() + ".");
        }
        try {
            DiskFile disk = DiskFile.at(known.file());
            Session opened = new Session(disk.load(), StackEditor::log);
            file = Optional.of(disk);
            return opened;
        } catch (StackFileException e) {
            throw new PartInitException(e.getMessage(), e);
        }
    }

    private static void log(RuntimeException fault) {
        ILog.of(StackEditor.class).error("A part of the window failed after a change of the document.", fault);
    }

    @Override
    public void createPartControl(Composite parent) {
        page = new StackPage(parent, session, history, this);
        getSite().setSelectionProvider(page.selection());
        MenuManager menu = new MenuManager();
        menu.add(new Separator("stage"));
        menu.add(new Separator("edit"));
        actions.onElements().forEach(menu::add);
        menu.add(new Separator("view"));
        menu.add(new Separator(IWorkbenchActionConstants.MB_ADDITIONS));
        page.setMenu(menu);
        getEditorSite().registerContextMenu(ID, menu, page.selection(), false);
        page.selection().addSelectionChangedListener(event -> actions.update());
        getSite().getService(IContextService.class).activateContext(CONTEXT);
        actions.update();
    }

    /** What is seen and can be zoomed. */
    public StackPage page() {
        return page;
    }

    /** The stop that is selected in the drawing, if one is. */
    Optional<StopMark> selectedStop() {
        return page == null ? Optional.empty() : page.selectedStop();
    }

    /** Leaves the keys of the Edit menu to a field in the drawing while something is typed there. */
    void typing(boolean now) {
        if (now) {
            actions.release(getEditorSite().getActionBars());
        } else {
            actions.register(getEditorSite().getActionBars());
        }
    }

    /** Says in the status line where the carriage and the selected stage stand. */
    void tellStatus() {
        if (page != null) {
            page.tellStatus();
        }
    }

    /** The document. */
    Session session() {
        return session;
    }

    /** The action for a global action's id, or {@code null} if there is none. */
    IAction action(String id) {
        return actions.of(id);
    }

    private void changed(SessionListener.Change change) {
        if (page != null) {
            page.sessionChanged(change);
        }
        if (!ENABLING.contains(change)) {
            return;
        }
        actions.update();
        firePropertyChange(PROP_DIRTY);
    }

    @Override
    public void setFocus() {
        page.setFocus();
    }

    @Override
    public boolean isDirty() {
        return session != null && session.isDirty();
    }

    @Override
    public boolean isSaveAsAllowed() {
        return true;
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        Optional<DiskFile> saved = file.isPresent() ? saving().save(file.get(), session.document())
                : saving().saveAs(Path.of(getEditorInput().getName()), session.document());
        saved.ifPresentOrElse(this::nowIn, () -> monitor.setCanceled(true));
    }

    @Override
    public void doSaveAs() {
        Path proposed = file.map(DiskFile::path).orElse(Path.of(getEditorInput().getName()));
        saving().saveAs(proposed, session.document()).ifPresent(this::nowIn);
    }

    private Saving saving() {
        return new Saving(getSite().getShell(), path -> {
            IEditorPart other = getSite().getPage().findEditor(new FileInput(path));
            return other != null && other != this;
        });
    }

    private void nowIn(DiskFile saved) {
        file = Optional.of(saved);
        FileInput input = new FileInput(saved.path());
        if (!input.equals(getEditorInput())) {
            setInputWithNotify(input);
            setPartName(input.getName());
            // Its tip is another, also where its name is the one that was proposed.
            firePropertyChange(PROP_TITLE);
        }
        new RecentFiles().add(saved.path());
        session.saved();
    }

    @Override
    public <T> T getAdapter(Class<T> kind) {
        if (kind == Session.class) {
            return kind.cast(session);
        }
        if (kind == CommandStack.class) {
            return kind.cast(history);
        }
        if (kind == IContentOutlinePage.class) {
            return kind.cast(new StackOutline(session, page.selection(), actions, page.view()));
        }
        return super.getAdapter(kind);
    }

    @Override
    public void dispose() {
        if (session != null) {
            session.removeListener(listener);
            actions.dispose();
            history.dispose();
        }
        super.dispose();
    }
}
