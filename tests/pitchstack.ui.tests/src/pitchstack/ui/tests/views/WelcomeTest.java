// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.intro.IIntroManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The welcome page and the way on from it. */
class WelcomeTest {
    private final Hands hands = new Hands();
    private final IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
    private final Shell shell = page.getWorkbenchWindow().getShell();
    private final IIntroManager welcome = PlatformUI.getWorkbench().getIntroManager();

    @AfterEach
    void close() {
        page.closeAllEditors(false);
        welcome.closeIntro(welcome.getIntro());
        hands.settle();
    }

    @Test
    void cautionsAndMakesRoomForAStack() throws PartInitException {
        welcome.showIntro(page.getWorkbenchWindow(), false);
        hands.settle();
        hands.picture(shell, "welcome");
        assertTrue(hands.the(shell, Label.class, l -> l.getText().contains("lock it out")).isVisible());
        page.openEditor(new StandInEditor.Input(Stacks.millimetres("Welcome")), StandInEditor.ID);
        hands.until("the page has gone", () -> welcome.getIntro() == null);
    }

    @Test
    void leadsToTheUserGuideByKeyboard() {
        welcome.showIntro(page.getWorkbenchWindow(), false);
        hands.settle();
        hands.focus(hands.the(shell, Link.class, l -> l.getText().contains("user guide")));
        assertNull(page.findView("pitchstack.ui.views.guide"));
        hands.enter(0);
        assertNotNull(page.findView("pitchstack.ui.views.guide"));
        hands.picture(shell, "guide");
    }
}
