// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IViewPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.ui.tests.Names;
import pitchstack.ui.views.welcome.Examples;

/**
 * Views where letters are large for the window: a window of two thirds of 1280 x 800 has as little room for its letters as one
 * of 1280 x 800 with letters half as large again.
 */
class LargeLettersTest {
    private static final Point WHOLE = new Point(1280, 800);
    private static final Point NARROW = new Point(853, 533);

    private final Hands hands = new Hands();
    private Bench bench;
    private Shell shell;
    private Rectangle before;

    @BeforeEach
    void open(@TempDir Path folder) {
        bench = new Bench(folder);
        shell = bench.shell();
        before = shell.getBounds();
        size(NARROW);
        bench.page().resetPerspective();
        hands.settle();
    }

    @AfterEach
    void close() {
        bench.clear();
        shell.setBounds(before);
        bench.page().resetPerspective();
        hands.settle();
    }

    private void size(Point size) {
        shell.setBounds(0, 0, size.x, size.y);
        hands.settle();
    }

    private void example(String name) {
        bench.command("pitchstack.ui.editor.openCopy", Map.of("path", Examples.file(name).orElseThrow().toString()));
    }

    private CTabFolder shown(String view) {
        IViewPart part = bench.view(view);
        hands.settle();
        return hands.the(shell, CTabFolder.class, f -> f.getSelection() != null
                && f.getSelection().getText().equals(part.getTitle()));
    }

    /** Shows a page, waits until it says what it has worked out, and looks for what is cut. */
    private void nothingIsCut(CTabFolder view, List<String> pages, String page, String sentence) {
        hands.page(shell, pages, page);
        hands.until(page + " says " + sentence, () -> !hands.all(view, Label.class,
                l -> l.isVisible() && l.getText().contains(sentence)).isEmpty());
        hands.settle();
        hands.picture(shell, "large-" + page.replace(' ', '-'));
        assertEquals(List.of(), Cut.in(view), page);
    }

    @Test
    void cutNothingInAccuracy() {
        example("slide-plate");
        CTabFolder view = shown("pitchstack.ui.views.accuracy");
        nothingIsCut(view, AccuracyDesk.PAGES, "Travel", "the carriage should stand within");
        nothingIsCut(view, AccuracyDesk.PAGES, "Preload", "of the flanks bear");
        nothingIsCut(view, AccuracyDesk.PAGES, "Warmth", "where the stages stand");
        nothingIsCut(view, AccuracyDesk.PAGES, "Budget", "This setting should stand within");
    }

    @Test
    void cutNothingInMeasurements() {
        example("slide-plate");
        CTabFolder view = shown("pitchstack.ui.views.runs");
        nothingIsCut(view, MeasurementsTest.PAGES, "Repeats", "At any one setting it comes back");
        nothingIsCut(view, MeasurementsTest.PAGES, "Pitches", "once the plan uses these pitches");
        nothingIsCut(view, MeasurementsTest.PAGES, "Print Scale", "Along x");
        nothingIsCut(view, MeasurementsTest.PAGES, "Readings", "Its scale known to");
    }

    @Test
    void cutNothingInWear() throws IOException {
        bench.openFence();
        CTabFolder view = shown("pitchstack.ui.views.wear");
        List<String> pages = List.of("Marks", "Seatings");
        nothingIsCut(view, pages, "Seatings", "A forecast by counting");
        nothingIsCut(view, pages, "Marks", "Of 13 targets");
    }

    /** The chart goes below the numbers where it has no room beside them, and comes back where it has. */
    @Test
    void putTheChartBelowTheNumbers() {
        example("slide-plate");
        CTabFolder view = shown("pitchstack.ui.views.accuracy");
        hands.page(shell, AccuracyDesk.PAGES, "Preload");
        Canvas chart = hands.the(view, Canvas.class, c -> Names.of(c).startsWith("Preload against"));
        Combo joint = hands.the(view, Combo.class, c -> Names.of(c).equals("Joint"));
        assertTrue(place(chart).y > place(joint).y + place(joint).height, "below: " + place(chart) + ", " + place(joint));
        size(WHOLE);
        hands.until("it is beside them", () -> place(chart).x > place(joint).x + place(joint).width);
        assertTrue(place(chart).y <= place(joint).y, "beside: " + place(chart) + ", " + place(joint));
        size(NARROW);
        hands.until("it is below them", () -> place(chart).y > place(joint).y + place(joint).height);
    }

    @Test
    void followTheKeyTab() {
        example("slide-plate");
        CTabFolder view = shown("pitchstack.ui.views.accuracy");
        hands.page(shell, AccuracyDesk.PAGES, "Preload");
        hands.until("it is worked out", () -> !hands.all(view, Label.class,
                l -> l.isVisible() && l.getText().contains("of the flanks bear")).isEmpty());
        Button sources = hands.the(view, Button.class, b -> b.getText().equals("&Where These Numbers Come From"));
        assertFalse(isInSight(sources));
        hands.focus(hands.the(view, Scale.class, s -> Names.of(s).startsWith("Preload")));
        for (int i = 0; i < 20 && !sources.isFocusControl(); i++) {
            hands.stroke(SWT.TAB);
        }
        assertTrue(sources.isFocusControl(), "Tab leads there");
        hands.until("it is in sight", () -> isInSight(sources));
    }

    private static Rectangle place(Control control) {
        return control.getDisplay().map(control.getParent(), null, control.getBounds());
    }

    private static boolean isInSight(Control control) {
        Rectangle place = place(control);
        for (Control at = control.getParent(); at != null; at = at.getParent()) {
            if (at instanceof ScrolledComposite around) {
                Rectangle area = at.getDisplay().map(around, null, around.getClientArea());
                if (!area.intersection(place).equals(place)) {
                    return false;
                }
            }
        }
        return true;
    }
}
