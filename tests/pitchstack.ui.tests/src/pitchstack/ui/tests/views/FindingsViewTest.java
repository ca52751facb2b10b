// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInfo;
import pitchstack.edit.Session;
import pitchstack.edit.SetValue;
import pitchstack.model.PitchstackPackage.Literals;
import pitchstack.model.Stage;

/** The Findings view: what the checks say, and the way to the place. */
class FindingsViewTest {
    private final Hands hands = new Hands();
    private final IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
    private final Shell shell = page.getWorkbenchWindow().getShell();
    private Session session;
    private Stage fine;
    private IEditorPart editor;
    private IViewPart view;

    @BeforeEach
    void open(TestInfo test) throws PartInitException {
        session = Stacks.millimetres(test.getTestMethod().orElseThrow().getName());
        fine = session.axis().getStages().get(1);
        editor = page.openEditor(new StandInEditor.Input(session), StandInEditor.ID);
        view = page.showView("pitchstack.ui.views.findings");
        hands.settle();
    }

    @AfterEach
    void close() {
        page.closeAllEditors(false);
        hands.settle();
    }

    @Test
    void listsAnErrorAsSoonAsItIsMadeAndLeadsToIt() {
        assertEquals("Findings", view.getTitle());
        session.run(new SetValue(fine, Literals.STAGE__PITCH, "nonsense", "Spoil the pitch"));
        hands.settle();
        assertEquals("Findings (1)", view.getTitle());
        assertEquals("Error", table().getItem(0).getText(0));
        hands.picture(shell, "findings-error");
        hands.focus(table());
        hands.enter(0);
        hands.until("the stage is selected", () -> editor.getSite().getSelectionProvider().getSelection()
                .equals(new StructuredSelection(fine)));
        hands.picture(shell, "findings-shown");
        session.history().undo();
        hands.settle();
        assertEquals("Findings", view.getTitle());
    }

    private Table table() {
        return hands.the(shell, Table.class, t -> t.getColumnCount() == 5);
    }
}
