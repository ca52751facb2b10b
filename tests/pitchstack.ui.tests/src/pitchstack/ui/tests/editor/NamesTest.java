// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.Accessible;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.IViewDescriptor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.ui.tests.Names;

/** Everything on the screen has a name for those who cannot see it. */
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

    @Test
    void namesEveryFigureOfTheDrawing() throws IOException {
        Desk.open(Stacks.save(Stacks.barred(), folder.resolve("stack.pitchstack")));
        Accessible canvas = Desk.canvas().getAccessible();
        List<String> names = new ArrayList<>();
        collect(canvas, ACC.CHILDID_SELF, names);
        assertTrue(names.get(0).startsWith("Carriage of Axis at 0.000 mm"), names.get(0));
        assertTrue(names.stream().anyMatch(name -> name.startsWith("Rack, index 0, range ")), names.toString());
        assertTrue(names.stream().anyMatch(name -> name.equals("Base row of Rack, 100 teeth")), names.toString());
        assertTrue(names.stream().anyMatch(name -> name.equals("barred, teeth 60 to 61")), names.toString());
        assertFalse(names.stream().anyMatch(String::isBlank), names.toString());
        // The canvas, which stands for the axis, two stages of two rows each, and the barred teeth.
        assertEquals(1 + 2 + 4 + 1, names.size(), names.toString());
    }

    private static void collect(Accessible canvas, int child, List<String> names) {
        names.add(Names.told(canvas, child));
        for (int inner : Names.children(canvas, child)) {
            collect(canvas, inner, names);
        }
    }
}
