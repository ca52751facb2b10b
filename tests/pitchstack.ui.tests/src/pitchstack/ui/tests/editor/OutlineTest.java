// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.PartInitException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.Session;
import pitchstack.model.Positioner;
import pitchstack.model.WornRange;

/** The outline beside the drawing. */
class OutlineTest {
    @TempDir
    private Path folder;
    private Session session;
    private Sight sight;
    private Tree tree;

    @BeforeEach
    void open() throws IOException, PartInitException {
        Desk.page().showView(IPageLayout.ID_OUTLINE);
        Positioner positioner = Stacks.plate();
        positioner.getAxes().get(0).getStages().get(0).getBaseRow().getWorn().add(Stacks.worn(40));
        var editor = Desk.open(Stacks.save(positioner, folder.resolve("plate.pitchstack")));
        session = editor.getAdapter(Session.class);
        sight = new Sight(session);
        Desk.settle();
        tree = (Tree) Desk.controls(Desk.shell(), control -> control instanceof Tree tree && tree.isVisible()
                && tree.getItemCount() == 1 && tree.getItem(0).getText().equals("New positioner")).get(0);
    }

    @AfterEach
    void close() {
        Desk.closeAll();
    }

    @Test
    void saysWhatWouldBeThereWhileNothingIsOpen() {
        Desk.closeAll();
        Desk.until("it says so", () -> Desk.controls(Desk.shell(), control -> control instanceof Label label
                && label.isVisible() && label.getText().contains("its parts are listed here")).size() == 1);
    }

    private static TreeItem item(TreeItem[] items, String begins) {
        for (TreeItem item : items) {
            if (item.getText().startsWith(begins)) {
                return item;
            }
        }
        throw new AssertionError("no item " + begins);
    }

    private TreeItem axis(String name) {
        return item(tree.getItem(0).getItems(), name);
    }

    private void select(TreeItem item) {
        tree.setFocus();
        tree.setSelection(item);
        Event event = new Event();
        event.item = item;
        tree.notifyListeners(SWT.Selection, event);
        Desk.settle();
    }

    private static TreeItem opened(TreeItem item) {
        Event event = new Event();
        event.item = item;
        item.getParent().notifyListeners(SWT.Expand, event);
        item.setExpanded(true);
        Desk.settle();
        return item;
    }

    @Test
    void listsAxesAndStagesWithTheirNumbers() {
        assertEquals("X  0.000 mm", axis("X").getText());
        assertEquals("Fine stage  4.9 mm, index 0", axis("X").getItem(0).getText());
        TreeItem rack = axis("X").getItem(1);
        assertEquals("Rack  5 mm, index 0", rack.getText());
        opened(rack);
        assertEquals("rider row  30 teeth", rack.getItem(0).getText());
        assertEquals("base row  100 teeth", rack.getItem(1).getText());
        assertEquals("worn, tooth 40", opened(rack.getItem(1)).getItem(0).getText());
    }

    @Test
    void followsWhatIsSelectedInTheDrawing() {
        Point label = sight.label(1);
        Desk.click(label.x, label.y);
        assertEquals("Fine stage  4.9 mm, index 0", tree.getSelection()[0].getText());
        Desk.key(SWT.ARROW_RIGHT, 0);
        assertEquals("Fine stage  4.9 mm, index +1", tree.getSelection()[0].getText());
    }

    @Test
    void selectsInTheDrawingAndLooksAtTheAxis() {
        select(item(axis("Y").getItems(), "Rack"));
        assertEquals("Y", session.axis().getName());
        assertEquals(session.axis().getStages().get(0), Desk.selected());
        Desk.canvas().setFocus();
        Desk.key(SWT.ARROW_RIGHT, 0);
        assertEquals(1, session.axis().getStages().get(0).getIndex(), "the stage selected in the outline moves");
    }

    /** The overview: pressed at its left or right end it brings that end of the drawing into sight. */
    @Test
    void scrollsTheDrawingByItsOverview() {
        Canvas overview = (Canvas) Desk.controls(Desk.shell(), control -> control.getClass().getSimpleName().equals("Overview")
                && control.isVisible()).get(0);
        for (int notch = 0; notch < 6; notch++) {
            Desk.wheel(500, 150, 1, SWT.MOD1);
        }
        int width = overview.getClientArea().width;
        mouse(overview, SWT.MouseDown, 4, 0);
        assertEquals(0, scrolled());
        mouse(overview, SWT.MouseUp, 4, SWT.BUTTON1);
        mouse(overview, SWT.MouseDown, width - 5, 0);
        int end = scrolled();
        mouse(overview, SWT.MouseUp, width - 5, SWT.BUTTON1);
        assertTrue(end > Desk.canvas().getSize().x, "far from the start: " + end);
        mouse(overview, SWT.MouseDown, width / 2, 0);
        int middle = scrolled();
        assertTrue(middle > 0 && middle < end, middle + " of " + end);
        mouse(overview, SWT.MouseMove, width / 2 + width / 10, SWT.BUTTON1);
        assertTrue(scrolled() > middle, "the frame follows the pointer");
        mouse(overview, SWT.MouseUp, width / 2 + width / 10, SWT.BUTTON1);
        Event key = new Event();
        key.keyCode = SWT.HOME;
        overview.notifyListeners(SWT.KeyDown, key);
        assertEquals(0, scrolled());
        key.keyCode = SWT.ARROW_RIGHT;
        overview.notifyListeners(SWT.KeyDown, key);
        assertTrue(scrolled() > 0);
    }

    private static int scrolled() {
        Desk.settle();
        return Desk.canvas().getViewport().getViewLocation().x;
    }

    private static void mouse(Canvas overview, int type, int x, int state) {
        Event event = new Event();
        event.x = x;
        event.y = overview.getClientArea().height / 2;
        event.button = type == SWT.MouseMove ? 0 : 1;
        event.stateMask = state;
        overview.notifyListeners(type, event);
        Desk.settle();
    }

    @Test
    void deletesWhatIsSelectedInIt() {
        TreeItem rack = opened(axis("X").getItem(1));
        TreeItem worn = opened(rack.getItem(1)).getItem(0);
        WornRange range = session.axis().getStages().get(0).getBaseRow().getWorn().get(0);
        select(worn);
        assertEquals(range, Desk.selected());
        Desk.page().activate(Desk.page().findView(IPageLayout.ID_OUTLINE));
        Desk.command("org.eclipse.ui.edit.delete");
        assertEquals(0, session.axis().getStages().get(0).getBaseRow().getWorn().size());
        Desk.command("org.eclipse.ui.edit.undo");
        assertEquals(1, session.axis().getStages().get(0).getBaseRow().getWorn().size());
        assertTrue(session.history().canRedo());
    }
}
