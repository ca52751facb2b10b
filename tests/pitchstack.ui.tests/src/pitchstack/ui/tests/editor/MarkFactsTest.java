// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.PartInitException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.Target;
import pitchstack.ui.editor.places.Bands;

/** The Properties view shows the facts of whatever mark is selected, however it came to be selected. */
class MarkFactsTest {
    private static final double MM = 1e12;

    @TempDir
    private Path folder;
    private IEditorPart editor;
    private Session session;
    private Sight sight;

    @BeforeEach
    void open() throws IOException, PartInitException {
        Positioner positioner = Stacks.barred();
        Axis axis = positioner.getAxes().get(0);
        axis.setHigh("400 mm");
        Target target = PitchstackFactory.eINSTANCE.createTarget();
        target.setName("slot");
        target.setPosition("203 mm");
        axis.getTargets().add(target);
        editor = Desk.draw(positioner, folder);
        session = editor.getAdapter(Session.class);
        sight = new Sight(session);
        Desk.page().showView(IPageLayout.ID_PROP_SHEET);
        Desk.page().activate(editor);
        Desk.settle();
    }

    @AfterEach
    void close() {
        Desk.closeAll();
    }

    /** The names of the facts that are shown. */
    private static List<String> facts() {
        return Desk.controls(Desk.shell(), control -> control instanceof Tree tree && tree.getColumnCount() == 2
                && tree.isVisible()).stream().flatMap(tree -> Arrays.stream(((Tree) tree).getItems()))
                .flatMap(group -> group.getItemCount() == 0 ? Stream.of(group) : Arrays.stream(group.getItems()))
                .map(item -> item.getText(0)).toList();
    }

    private static void shows(String fact, String when) {
        Desk.until("“" + fact + "” is shown " + when + ", where there was " + facts(), () -> facts().contains(fact));
    }

    private void click(double mm) {
        Desk.click(sight.px(mm * MM), Bands.RULER - 5);
    }

    @Test
    void showsThemAfterAClick() {
        click(203);
        shows("Position", "for a target");
        click(0);
        shows("Datum", "for position 0");
        click(203);
        Desk.click(sight.px(400 * MM) + 2, Bands.RULER - 5);
        shows("Highest position", "for a stop");
        Point tooth = sight.baseTooth(0, 60);
        Desk.click(tooth.x, tooth.y);
        shows("First tooth", "for a worn range");
    }

    @Test
    void showsThemAfterKeysAndUndo() {
        Desk.key('m', 0, 'm');
        shows("Datum", "for position 0");
        Desk.key(SWT.ARROW_RIGHT, 0);
        Desk.key('m', 0, 'm');
        shows("Position", "for a target");
        Desk.key(SWT.ARROW_RIGHT, 0);
        Desk.command("org.eclipse.ui.edit.undo");
        shows("Position", "after undo");
        Desk.command("org.eclipse.ui.edit.delete");
        shows("Datum", "for the axis when the target is gone");
        Desk.command("org.eclipse.ui.edit.undo");
        Desk.key('m', 0, 'm');
        Desk.key('m', 0, 'm');
        shows("Position", "for the target that is back");
    }

    @Test
    void showsThemAfterAnotherEditorWasActive() throws IOException {
        click(203);
        IEditorPart other = Desk.open(Stacks.save(Stacks.pair(), folder.resolve("other.pitchstack")));
        shows("Datum", "for the axis of the other file");
        Desk.page().activate(editor);
        Desk.settle();
        assertEquals(session.axis().getTargets().get(0), Desk.selected());
        shows("Position", "for the target, again");
        Desk.page().closeEditor(other, false);
        shows("Position", "when the other file is closed");
    }
}
