// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInfo;
import pitchstack.core.stack.Setting;
import pitchstack.edit.Session;

/** A target is typed, its moves are read, applied and taken back. */
class TargetViewTest {
    private final Hands hands = new Hands();
    private final IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
    private final Shell shell = page.getWorkbenchWindow().getShell();
    private Session session;

    @BeforeEach
    void open(TestInfo test) throws PartInitException {
        session = Stacks.millimetres(test.getTestMethod().orElseThrow().getName());
        page.openEditor(new StandInEditor.Input(session), StandInEditor.ID);
        page.showView("pitchstack.ui.views.target");
        hands.settle();
    }

    @AfterEach
    void close() {
        page.closeAllEditors(false);
        hands.settle();
    }

    @Test
    void readsAppliesAndTakesBackTheMovesToATypedTarget() {
        hands.picture(shell, "target-empty");
        hands.focus(target());
        hands.type("10.1");
        hands.until("the steps are there", () -> steps().startsWith("1. "));
        hands.picture(shell, "target-reached");
        hands.enter(0);
        hands.enter(0);
        assertEquals("10.1", target().getText());
        Setting reached = session.analysis().current();
        assertEquals(10_100_000_000_000L, session.analysis().spec().position(reached));
        session.history().undo();
        assertEquals(Setting.of(0, 0), session.analysis().current());
    }

    @Test
    void saysUnderTheFieldWhatItCannotRead() {
        hands.focus(target());
        hands.type("ten");
        hands.until("the sentence is there", () -> says("“ten” is not"));
        hands.picture(shell, "target-bad");
    }

    @Test
    void offersBothNeighboursOfAnUnreachableTarget() {
        hands.focus(target());
        hands.type("10.15");
        hands.focus(tolerance());
        hands.type("0.01");
        hands.until("the reason is there", () -> says("lies between 10.100 mm and 10.200 mm"));
        hands.picture(shell, "target-between");
    }

    private Composite root() {
        return shell;
    }

    private Text target() {
        return hands.all(root(), Text.class, t -> t.getToolTipText() != null && t.getToolTipText().startsWith("Where the")).get(0);
    }

    private Text tolerance() {
        return hands.all(root(), Text.class, t -> t.getToolTipText() != null && t.getToolTipText().startsWith("The largest")).get(0);
    }

    private String steps() {
        return hands.all(root(), StyledText.class, t -> t.isVisible() && t.getText().contains("from")).stream().findFirst()
                .map(StyledText::getText).orElse("");
    }

    private boolean says(String part) {
        return !hands.all(root(), Label.class, l -> l.isVisible() && l.getText().contains(part)).isEmpty();
    }
}
