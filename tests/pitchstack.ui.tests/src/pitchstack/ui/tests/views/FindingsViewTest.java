// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.IViewPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.Session;
import pitchstack.edit.SetValue;
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

    private Table table() {
        return hands.the(shell, Table.class, t -> t.getColumnCount() == 5);
    }
}
