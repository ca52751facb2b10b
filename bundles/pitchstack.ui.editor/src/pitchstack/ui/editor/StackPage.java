// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor;

import java.util.Optional;
import java.util.OptionalInt;
import org.eclipse.draw2d.IFigure;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.events.MouseEvent;
import org.eclipse.swt.events.MouseListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import pitchstack.core.stack.ToothSpan;
import pitchstack.edit.Session;
import pitchstack.edit.SessionListener.Change;
import pitchstack.edit.ToothMark;
import pitchstack.model.Row;
import pitchstack.model.WearKind;
import pitchstack.ui.editor.handlers.MarkTeethHandler;
import pitchstack.ui.editor.parts.Elements;
import pitchstack.ui.editor.parts.HistoryCommandStack;
import pitchstack.ui.editor.palette.Piece;
import pitchstack.ui.editor.palette.PieceBar;
import pitchstack.ui.editor.parts.Playback;
import pitchstack.ui.editor.parts.SideView;
import pitchstack.ui.editor.parts.StackDomain;
import pitchstack.ui.editor.parts.StackViewer;
import pitchstack.ui.editor.parts.StageWords;
import pitchstack.ui.editor.parts.StopMark;

/** The page of an editor: a head with the position of the carriage, and the side view below it. */
public final class StackPage {
    private final Session session;
    private final StackEditor editor;
    private final StackViewer viewer = new StackViewer();
    private final PageHead head;
    private final ModelSelection selection;
    private final Playback playback;
    private final StackDomain domain;
    private int pressedX;

    StackPage(Composite parent, Session session, HistoryCommandStack history, StackEditor editor) {
        this.session = session;
        this.editor = editor;
        Composite page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(page);
        head = new PageHead(page, session, this);
        domain = new StackDomain(editor);
        PieceBar pieces = new PieceBar(page, this::take);
        domain.onPiece(pieces::show);
        domain.setCommandStack(history);
        viewer.onTyping(editor::typing);
        history.onAdded(element -> viewer.selectElement(element));
        // First, since the parts of the drawing give the domain their names.
        domain.addViewer(viewer);
        viewer.open(page, session);
        playback = new Playback(viewer.view(), page.getDisplay(), head::update);
        page.addDisposeListener(event -> playback.stop());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas());
        selection = new ModelSelection(session, viewer);
        selection.addSelectionChangedListener(event -> tellStatus());
        view().onMark((row, teeth) -> canvas().getDisplay().asyncExec(() -> mark(row, teeth)));
        canvas().addMouseListener(MouseListener.mouseDownAdapter(this::pressed));
        canvas().getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                if (event.childID == ACC.CHILDID_SELF) {
                    event.result = sentence();
                }
            }
        });
    }

    private void take(Optional<Piece> piece) {
        domain.take(piece);
        canvas().setFocus();
    }

    private void pressed(MouseEvent event) {
        pressedX = view().scrolled().x + event.x;
    }

    /** Asks what the teeth are fit for, once the mouse has been let go. */
    private void mark(Row row, ToothSpan teeth) {
        if (!canvas().isDisposed()) {
            MarkTeethHandler.ask(canvas().getShell(), session,
                    new ToothMark(row, teeth.first(), teeth.last(), WearKind.WORN, ""));
        }
    }

    /** The canvas of the drawing. */
    public Control canvas() {
        return viewer.getControl();
    }

    /** What is drawn on it, without handles and what follows the pointer. */
    public IFigure drawing() {
        return viewer.drawing();
    }

    /** What is seen. */
    public SideView view() {
        return viewer.view();
    }

    /** Shows a proposed move as it is made. */
    public Playback playback() {
        return playback;
    }

    /** What is selected. */
    public ModelSelection selection() {
        return selection;
    }

    /** The stop that is selected, if one is. */
    Optional<StopMark> selectedStop() {
        return viewer.selectedStop();
    }

    /** Opens a field in which the name or the pitch of the selected stage is typed. */
    public void edit(String fact) {
        viewer.edit(fact);
    }

    /** The tooth of a drawn row that was pressed last; empty if the press was beside the row. */
    public OptionalInt pressedTooth(Row row) {
        return viewer.tooth(row, pressedX);
    }

    void setMenu(MenuManager menu) {
        canvas().setMenu(menu.createContextMenu(canvas()));
    }

    void setFocus() {
        canvas().setFocus();
    }

    void sessionChanged(Change change) {
        viewer.sessionChanged(change);
        if (change == Change.POINTED || change == Change.SUPPOSED) {
            return;
        }
        head.update();
        tellStatus();
    }

    void tellStatus() {
        canvas().getAccessible().sendEvent(ACC.EVENT_NAME_CHANGED, null);
        editor.getEditorSite().getActionBars().getStatusLineManager().setMessage(sentence());
    }

    /** The position and the selected stage in one sentence. */
    private String sentence() {
        if (playback != null && playback.isPlaying()) {
            return playback.words();
        }
        boolean only = session.positioner().getAxes().size() == 1;
        String position = (only ? "Carriage" : "Axis " + session.axis().getName() + ", carriage") + " at " + view().position();
        return viewer.selectedElement().flatMap(Elements::stage)
                .map(stage -> position + "; " + new StageWords(stage,
                        session.analysis().spec().stages().get(Elements.number(stage)).rows(),
                        session.shown().index(Elements.number(stage))).sentence())
                .orElse(position);
    }
}
