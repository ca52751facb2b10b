// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.Accessible;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.IViewDescriptor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.Stage;
import pitchstack.ui.tests.Names;

/** Everything on the screen has a name for those who cannot see it, and every piece a menu. */
class NamesTest {
    @TempDir
    private Path folder;

    @AfterEach
    void close() {
        Desk.closeAll();
        // Other tests count on the views that are in front at first.
        Desk.page().resetPerspective();
        Desk.settle();
    }

    @Test
    void namesEveryControlOfEveryView() throws IOException, PartInitException {
        Desk.open(Stacks.save(Stacks.barred(), folder.resolve("stack.pitchstack")));
        Desk.settle();
        List<String> missing = new ArrayList<>();
        int shown = 0;
        for (IViewDescriptor view : PlatformUI.getWorkbench().getViewRegistry().getViews()) {
            if (view.getId().startsWith("pitchstack.") || view.getId().equals(IPageLayout.ID_OUTLINE)
                    || view.getId().equals(IPageLayout.ID_PROP_SHEET)) {
                Desk.page().showView(view.getId());
                Desk.settle();
                Names.missing(Desk.shell()).forEach(path -> missing.add(view.getLabel() + ": " + path));
                shown++;
            }
        }
        assertTrue(shown >= 6, shown + " views were looked at");
        assertEquals(List.of(), missing.stream().distinct().toList());
    }

    /** Every entry has an effect on one kind of element or another, and is greyed on the others. */
    @Test
    void offersInTheContextMenuWhatFitsWhatIsSelected() throws IOException {
        Positioner positioner = Stacks.barred();
        positioner.getAxes().get(0).getTargets().add(PitchstackFactory.eINSTANCE.createTarget());
        positioner.getAxes().get(0).getTargets().get(0).setPosition("10 mm");
        positioner.getAxes().get(0).getStages().get(0).setIndex(3);
        IEditorPart editor = Desk.draw(positioner, folder);
        Axis axis = editor.getAdapter(Session.class).axis();
        Stage rack = axis.getStages().get(0);
        assertEquals(Set.of("Place", "Add Stage Above"), offered(editor, axis));
        Set<String> ofStage = Set.of("Place", "Add Stage Above", "Edit Pitch", "Edit Name", "Duplicate", "Move Up", "Move Down",
                "Mark Teeth…", "Move to Index 0", "Cut", "Copy");
        assertOffered(editor, rack, ofStage, Set.of("Delete"));
        assertOffered(editor, rack.getBaseRow(), ofStage, Set.of("Lengthen Row by a Tooth", "Shorten Row by a Tooth"));
        assertOffered(editor, rack.getBaseRow().getWorn().get(0), ofStage, Set.of("Delete"));
        assertOffered(editor, axis.getTargets().get(0), Set.of("Place", "Add Stage Above", "Duplicate", "Move Up", "Move Down",
                "Cut", "Copy"), Set.of("Delete"));
    }

    private static void assertOffered(IEditorPart editor, Object element, Set<String> usual, Set<String> more) {
        Set<String> expected = new TreeSet<>(usual);
        expected.addAll(more);
        assertEquals(expected, new TreeSet<>(offered(editor, element)), element.toString());
    }

    /** What can be chosen in the context menu besides what is so always. */
    private static Set<String> offered(IEditorPart editor, Object element) {
        editor.getEditorSite().getSelectionProvider().setSelection(new StructuredSelection(element));
        Desk.settle();
        Menu menu = Desk.canvas().getMenu();
        menu.notifyListeners(SWT.Show, new Event());
        Desk.settle();
        Set<String> offered = Arrays.stream(menu.getItems()).filter(MenuItem::isEnabled).map(item -> Desk.plain(item.getText()))
                .filter(text -> !text.isEmpty()).collect(Collectors.toSet());
        menu.notifyListeners(SWT.Hide, new Event());
        Desk.settle();
        offered.removeAll(Set.of("Paste", "Zoom In", "Zoom Out", "Fit to Window", "Copy Drawing as Picture"));
        return offered;
    }

    @Test
    void namesEveryFigureOfTheDrawing() throws IOException {
        Desk.open(Stacks.save(Stacks.barred(), folder.resolve("stack.pitchstack")));
        Accessible canvas = Desk.canvas().getAccessible();
        List<String> names = new ArrayList<>();
        collect(canvas, ACC.CHILDID_SELF, names);
        assertTrue(names.get(0).startsWith("Carriage at 0.000 mm"), names.get(0));
        assertTrue(names.stream().anyMatch(name -> name.startsWith("Rack, index 0, range ")), names.toString());
        assertTrue(names.stream().anyMatch(name -> name.equals("Base row of Rack, 100 teeth")), names.toString());
        assertTrue(names.stream().anyMatch(name -> name.equals("barred, teeth 60 to 61")), names.toString());
        assertFalse(names.stream().anyMatch(String::isBlank), names.toString());
        assertTrue(names.contains("Position 0, with the datum at 0.000 mm"), names.toString());
        // The canvas, which stands for the axis, two stages of two rows each, the barred teeth, and position 0.
        assertEquals(1 + 2 + 4 + 1 + 1, names.size(), names.toString());
    }

    private static void collect(Accessible canvas, int child, List<String> names) {
        names.add(Names.told(canvas, child));
        for (int inner : Names.children(canvas, child)) {
            collect(canvas, inner, names);
        }
    }
}
