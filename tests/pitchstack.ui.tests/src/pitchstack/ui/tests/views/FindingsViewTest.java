// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.IViewPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.Session;
import pitchstack.edit.SetValue;
import pitchstack.model.Axis;
import pitchstack.model.PitchstackPackage.Literals;
import pitchstack.model.Stage;

/** The Findings view: what the checks say, and the way to the place. */
class FindingsViewTest {
    private final Hands hands = new Hands();
    private Bench bench;
    private Shell shell;
    private Session session;
    private Stage fine;
    private IViewPart view;

    @BeforeEach
    void open(@TempDir Path folder) {
        bench = new Bench(folder);
        shell = bench.shell();
        session = bench.open("Drill table", Stacks.millimetres());
        fine = session.axis().getStages().get(1);
        view = bench.view("pitchstack.ui.views.findings");
    }

    @AfterEach
    void close() {
        bench.clear();
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
        hands.until("the stage is selected", () -> bench.selection().equals(new StructuredSelection(fine)));
        hands.picture(shell, "findings-shown");
        session.history().undo();
        hands.settle();
        assertEquals("Findings", view.getTitle());
    }

    @Test
    void tellsAxesApartAndGoesToTheRightOne() {
        session = bench.open("Plate", Stacks.plate());
        Axis y = session.positioner().getAxes().get(1);
        Stage rack = y.getStages().get(0);
        session.run(new SetValue(rack, Literals.STAGE__PITCH, "nonsense", "Spoil the pitch"));
        bench.view("pitchstack.ui.views.findings");
        assertEquals("axis “Y”, stage “Rack”", table().getItem(0).getText(1));
        hands.focus(table());
        hands.enter(0);
        hands.until("its axis is looked at", () -> session.axis() == y);
        hands.until("the stage is selected", () -> bench.selection().equals(new StructuredSelection(rack)));
    }

    @Test
    void copiesWhatIsChosen() {
        session.run(new SetValue(fine, Literals.STAGE__PITCH, "nonsense", "Spoil the pitch"));
        hands.focus(table());
        hands.chord(SWT.MOD1, 'c');
        Clipboard clipboard = new Clipboard(shell.getDisplay());
        String copied = (String) clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        assertTrue(copied.startsWith("Error\tstage “Fine stage”\tThe pitch cannot be read: “nonsense”"), copied);
    }

    @Test
    void saysThatNothingIsFoundAndUndoesFromHere() {
        assertTrue(says("No findings:"));
        assertFalse(says("No finest step is asked for"));
        session.run(new SetValue(session.axis(), Literals.AXIS__WANTED_STEP, null, "Ask for no step"));
        hands.until("it says that the step is not checked", () -> says("No finest step is asked for"));
        session.history().undo();
        session.run(new SetValue(fine, Literals.STAGE__PITCH, "nonsense", "Spoil the pitch"));
        hands.focus(table());
        hands.chord(SWT.MOD1, 'z');
        assertEquals("4.9 mm", fine.getPitch());
    }

    private Table table() {
        return hands.the(shell, Table.class, t -> t.getColumnCount() == 5);
    }

    private boolean says(String words) {
        return !hands.all(shell, Label.class, l -> l.isVisible() && l.getText().contains(words)).isEmpty();
    }
}
