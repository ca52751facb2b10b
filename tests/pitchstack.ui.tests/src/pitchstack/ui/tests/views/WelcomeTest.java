// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.intro.IIntroManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.Session;

/** The welcome page and the way on from it. */
class WelcomeTest {
    private final Hands hands = new Hands();
    private final IIntroManager welcome = PlatformUI.getWorkbench().getIntroManager();
    private Bench bench;
    private Shell shell;

    @BeforeEach
    void open(@TempDir Path folder) {
        bench = new Bench(folder);
        shell = bench.shell();
        bench.command("org.eclipse.ui.help.quickStartAction", Map.of());
        hands.until("the page is there", () -> welcome.getIntro() != null);
    }

    @AfterEach
    void close() {
        bench.clear();
        welcome.closeIntro(welcome.getIntro());
        hands.settle();
    }

    @Test
    void cautionsBeforeAnythingElseIsDone() {
        hands.picture(shell, "welcome");
        assertTrue(hands.the(shell, Label.class, l -> l.getText().contains("lock it out")).isVisible());
        assertTrue(hands.the(shell, Label.class, l -> l.getText().contains("never a guard")).isVisible());
        assertTrue(hands.the(shell, Label.class, l -> l.getText().contains("instrument you trust")).isVisible());
    }

    @Test
    void opensAnExampleAsACopyByKeyboard() {
        hands.focus(hands.the(shell, Link.class, l -> l.getText().contains("Cross-cut fence")));
        hands.enter(0);
        hands.until("the page has gone", () -> welcome.getIntro() == null);
        assertEquals("Cross-cut fence", bench.editor().getAdapter(Session.class).positioner().getTitle());
        assertFalse(bench.editor().getEditorInput().exists(), "it stands in no file");
        assertSame(bench.editor(), bench.page().getActivePart());
        hands.until("a control has the focus", () -> shell.getDisplay().getFocusControl() != null);
        hands.key(0, SWT.F1);
        assertNotNull(bench.page().findView("pitchstack.ui.views.guide"), "keys work at once");
        bench.page().hideView(bench.page().findView("pitchstack.ui.views.guide"));
        hands.picture(shell, "example");
    }

    @Test
    void listsEveryExampleWithWhatItShows() {
        for (String title : List.of("Cross-cut fence", "Grid plate", "Index table", "Ram shim", "Slide plate")) {
            assertTrue(hands.the(shell, Link.class, l -> l.getText().contains(title)).getText().contains("</a> — "), title);
        }
    }

    @Test
    void leadsToTheUserGuideByKeyboard() {
        hands.focus(hands.the(shell, Link.class, l -> l.getText().contains("user guide")));
        hands.enter(0);
        hands.until("the page has gone", () -> welcome.getIntro() == null);
        assertNotNull(bench.page().findView("pitchstack.ui.views.guide"));
        hands.picture(shell, "guide");
        bench.page().hideView(bench.page().findView("pitchstack.ui.views.guide"));
    }
}
