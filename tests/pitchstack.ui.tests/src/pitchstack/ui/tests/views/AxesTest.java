// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.part.ViewPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.Session;

/** A positioner of two axes. */
class AxesTest {
    private final Hands hands = new Hands();
    private Bench bench;

    @BeforeEach
    void open(@TempDir Path folder) {
        bench = new Bench(folder);
    }

    @AfterEach
    void close() {
        bench.clear();
    }

    private static String heading(IViewPart view) {
        return ((ViewPart) view).getContentDescription();
    }

    @Test
    void isSwitchedByKeyboardFromTheDrawingAndFromAView() {
        IViewPart target = bench.view("pitchstack.ui.views.target");
        IViewPart coverage = bench.view("pitchstack.ui.views.coverage");
        Session session = bench.open("plate", Stacks.plate());
        assertEquals("X", session.axis().getName());
        assertEquals("Axis “X”, 1 of 2", heading(target));
        bench.shell().forceActive();
        bench.page().activate(bench.editor());
        hands.settle();
        hands.pressOutside("alt+Next");
        assertEquals("Y", session.axis().getName());
        assertEquals("Axis “Y”, 2 of 2", heading(target));
        assertEquals("Axis “Y”, 2 of 2", heading(coverage));
        bench.page().activate(target);
        hands.settle();
        hands.pressOutside("alt+Prior");
        assertEquals("X", session.axis().getName());
        Combo combo = hands.the(bench.shell(), Combo.class, c -> Stream.of(c.getItems()).anyMatch("Y"::equals));
        assertEquals("X", combo.getText(), "the drawing goes along");
        hands.picture(bench.shell(), "axes");
    }

    @Test
    void isSwitchedInTheHeadingOfAView() {
        IViewPart target = bench.view("pitchstack.ui.views.target");
        Session session = bench.open("plate", Stacks.plate());
        ToolItem button = button();
        button.notifyListeners(SWT.Selection, new Event());
        hands.settle();
        assertEquals("Axis “Y”, 2 of 2", heading(target));
        assertEquals("Y", session.axis().getName());
    }

    private ToolItem button() {
        return hands.all(bench.shell(), ToolBar.class, bar -> bar.isVisible()).stream()
                .flatMap(bar -> Stream.of(bar.getItems()))
                .filter(item -> item.getToolTipText() != null && item.getToolTipText().startsWith("Look at the next axis"))
                .findFirst().orElse(null);
    }

    @Test
    void isNotSpokenOfWhereThereIsOnlyOne() {
        IViewPart target = bench.view("pitchstack.ui.views.target");
        Session session = bench.open("one", Stacks.millimetres());
        assertEquals("", heading(target));
        assertNull(button());
        hands.pressOutside("alt+Next");
        assertTrue(session.positioner().getAxes().contains(session.axis()));
        assertTrue(target.getSite() instanceof IViewSite);
    }
}
