// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.AddElement;
import pitchstack.edit.MoveStage;
import pitchstack.edit.NewStack;
import pitchstack.edit.Session;
import pitchstack.model.Stage;
import pitchstack.model.WearKind;
import pitchstack.model.WornRange;

/** The first tour on the fence, taken with real keys. */
class TourTest {
    private static final String TARGET = "pitchstack.ui.views.target";
    private static final String TOUR = "pitchstack.ui.views.tour";

    private final Hands hands = new Hands();
    private Bench bench;

    @BeforeEach
    void open(@TempDir Path folder) {
        bench = new Bench(folder);
        bench.view("org.eclipse.ui.views.PropertySheet");
        // Where an earlier window left it open it has seen other documents already.
        bench.page().hideView(bench.page().findView(TOUR));
        bench.command("pitchstack.ui.views.showTour", Map.of());
    }

    @AfterEach
    void close() {
        bench.clear();
        bench.page().hideView(bench.page().findView(TOUR));
        hands.settle();
    }

    private void onStep(String title) {
        hands.until("the tour says “" + title + "”",
                () -> !hands.all(bench.shell(), Label.class, l -> l.isVisible() && l.getText().matches("→ .*" + title)).isEmpty());
    }

    private void press(String button) {
        bench.shell().forceActive();
        hands.clickOutside(hands.the(bench.shell(), Button.class, b -> b.getText().replace("&", "").equals(button)));
    }

    @Test
    void followsAlongFromTheFirstStepToTheLast() {
        onStep("Open the fence");
        hands.picture(bench.shell(), "tour-first");
        press("Open the fence");
        onStep("Move a stage");
        Session session = bench.editor().getAdapter(Session.class);
        Stage rack = session.axis().getStages().get(0);
        bench.page().activate(bench.editor());
        bench.select(rack);
        hands.key(0, SWT.ARROW_RIGHT);
        assertEquals(49, rack.getIndex());
        onStep("Take it back");
        bench.page().activate(bench.page().findView(TOUR));
        hands.settle();
        hands.chord(SWT.CTRL, 'z');
        assertEquals(48, rack.getIndex(), "Ctrl+Z works in the tour itself");
        onStep("Set a target");
        hands.picture(bench.shell(), "tour-target");
        press("Go to Target");
        hands.until("the Target view is in front", () -> bench.page().getActivePart() == bench.page().findView(TARGET));
        hands.focus(hands.the(bench.shell(), Text.class, TourTest::asksForAPosition));
        hands.type("37.63");
        hands.until("it can be applied", () -> !hands.all(bench.shell(), Button.class,
                b -> b.isVisible() && b.getText().replace("&", "").startsWith("Apply") && b.isEnabled()).isEmpty());
        hands.enter(SWT.CTRL);
        onStep("See the coverage");
        press("Go to Coverage");
        Text tolerance = hands.all(bench.shell(), Text.class, t -> t.isVisible() && t.getMessage().endsWith("(axis)")
                && t.getToolTipText().startsWith("Up to which error")).get(0);
        hands.focus(tolerance);
        hands.type("0.005");
        onStep("Bar a tooth");
        WornRange mark = NewStack.wornRange(200);
        mark.setKind(WearKind.BARRED);
        session.run(AddElement.wornRange(rack.getBaseRow(), mark));
        onStep("Keep it");
        press("Skip this step");
        hands.until("it is over", () -> !hands.all(bench.shell(), Label.class,
                l -> l.isVisible() && l.getText().contains("That was the tour")).isEmpty());
        hands.picture(bench.shell(), "tour-over");
        press("Start over");
        onStep("Open the fence");
        assertFalse(session.analysis().hasErrors());
        press("Open the fence");
        onStep("Move a stage");
        assertEquals(48, bench.editor().getAdapter(Session.class).axis().getStages().get(0).getIndex());
    }

    /** A fence that was moved before is not one on which a stage is still to be moved. */
    @Test
    void beginsAtTheFirstStepWhereTheFenceWasMovedBefore() throws IOException {
        Session moved = bench.openFence();
        moved.run(new MoveStage(moved.axis().getStages().get(0), 60));
        bench.page().hideView(bench.page().findView(TOUR));
        bench.command("pitchstack.ui.views.showTour", Map.of());
        onStep("Open the fence");
        hands.settle();
        press("Open the fence");
        onStep("Move a stage");
        assertEquals(60, moved.axis().getStages().get(0).getIndex(), "the one that was moved stays as it was left");
    }

    private static boolean asksForAPosition(Text text) {
        return text.getToolTipText() != null && text.getToolTipText().startsWith("Where the carriage");
    }
}
