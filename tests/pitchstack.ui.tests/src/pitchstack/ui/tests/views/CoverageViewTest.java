// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.IJobChangeListener;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.core.stack.Setting;
import pitchstack.edit.AddElement;
import pitchstack.edit.NewStack;
import pitchstack.edit.RemoveElement;
import pitchstack.edit.Session;
import pitchstack.edit.SetValue;
import pitchstack.edit.ToothMark;
import pitchstack.model.PitchstackPackage.Literals;
import pitchstack.model.Stage;
import pitchstack.model.WearKind;
import pitchstack.model.WornRange;

/**
 * The coverage of the cross-cut fence. By hand, in hundredths of an inch: a position u is 25 n + 24 m with m from −12
 * to 12, so that each u has one m, −u modulo 25, and one n; from 0 to 9600 every u has its n in range. The 24 rider
 * teeth meet base teeth 100 and 101 at n from 77 to 101: 25 × 25 = 625 positions over worn teeth of 9601. Within
 * 0.002 in each position reaches 0.004 in, the two at the ends half of it: 38.4 in of 96 in, 2.5 in of them worn, with
 * 9600 gaps of 0.006 in between.
 */
class CoverageViewTest {
    private static final String FENCE = "40.0 % of 96.000 in is reached within ±0.002 in: 37.4 % over clean teeth, 2.6 % only"
            + " over worn teeth. 9600 gaps, the largest 0.006 in, first at 0.002 in. Finest step everywhere 0.010 in.";
    private static final int FIRST_WORN = 77;
    private static final int LAST_WORN = 101;

    private final Hands hands = new Hands();
    private Bench bench;
    private Shell shell;
    private Session session;

    @BeforeEach
    void open(@TempDir Path folder) throws IOException {
        bench = new Bench(folder);
        shell = bench.shell();
        session = bench.openFence();
        bench.view("pitchstack.ui.views.target");
        // What was typed for the fence before is still there.
        target().setText("");
        bench.view("pitchstack.ui.views.coverage");
        awaits(FENCE);
    }

    @AfterEach
    void close() {
        bench.clear();
        bench.view("org.eclipse.ui.views.PropertySheet");
    }

    @Test
    void tellsTheFiguresOfTheFence() {
        for (String word : new String[] {"clean", "worn only, lower", "not reached", "mixed"}) {
            assertTrue(says(word), word);
        }
        hands.picture(shell, "coverage-fence");
    }

    /** Within half a step all is reached: 625 × 0.010 in over worn teeth are 6.25 in, 6.5 % of 96 in. */
    @Test
    void reachesAllWithinHalfAStep() {
        hands.focus(tolerance());
        hands.type("0.005");
        awaits("100.0 % of 96.000 in is reached within ±0.005 in: 93.5 % over clean teeth, 6.5 % only over worn teeth."
                + " No gaps. Finest step everywhere 0.010 in.");
        hands.picture(shell, "coverage-half-step");
        tolerance().setText("");
        awaits(FENCE);
        hands.focus(tolerance());
        hands.type("wide");
        hands.until("the sentence is there", () -> says("“wide” is not a length"));
        assertFalse(says("is reached within"));
        hands.picture(shell, "coverage-bad");
    }

    /** Base teeth 200 and 201 are met at n from 177 to 201, which are 625 more positions. */
    @Test
    void drawsMarkedTeethAndTheirUndo() {
        hands.focus(strip());
        byte[] before = pixels();
        WornRange range = NewStack.wornRange(200);
        range.setLast(201);
        session.run(AddElement.wornRange(session.axis().getStages().get(0).getBaseRow(), range));
        awaits("40.0 % of 96.000 in is reached within ±0.002 in: 34.8 % over clean teeth, 5.2 % only over worn teeth."
                + " 9600 gaps, the largest 0.006 in, first at 0.002 in. Finest step everywhere 0.010 in.");
        byte[] marked = pixels();
        assertFalse(Arrays.equals(before, marked));
        hands.chord(SWT.MOD1, 'z');
        awaits(FENCE);
        assertArrayEquals(before, pixels());
    }

    @Test
    void clicksPlanATarget() {
        click(strip().getClientArea().width / 2);
        hands.until("a target is there", () -> !target().getText().isEmpty());
        double inches = Double.parseDouble(target().getText());
        assertEquals(48, inches, 0.25, "the middle of 96 in, as near as a pixel of about 0.15 in");
        hands.until("it is planned", () -> says("exactly on the target"));
        hands.picture(shell, "coverage-clicked");
        assertFalse(session.isDirty(), "nothing moves before it is applied");
    }

    @Test
    void tellsAtThePointerHowAPositionIsReached() {
        int width = strip().getClientArea().width;
        int worn = 0;
        for (int tenth = 1; tenth < 20; tenth++) {
            int x = width * tenth / 20;
            move(x);
            hands.until("the nearest setting is named", () -> String.valueOf(strip().getToolTipText()).contains("\n"));
            String tip = strip().getToolTipText();
            int u = (int) Math.round(100 * Double.parseDouble(tip.substring(0, tip.indexOf(" in:"))));
            int m = Math.floorMod(12 - u, 25) - 12;
            assertEquals(0, (u - 24 * m) % 25, "no such index");
            int n = (u - 24 * m) / 25;
            boolean over = n >= FIRST_WORN && n <= LAST_WORN;
            worn += over ? 1 : 0;
            assertTrue(tip.contains(over ? "reached only over worn teeth" : "reached over clean teeth"), tip + ", n " + n);
            assertTrue(tip.contains("A setting stands exactly here."), tip);
            // 25 n + 24 m = u has one answer with m from −12 to 12.
            assertTrue(tip.endsWith(over ? "Reached by 1 setting, over worn teeth." : "Reached by 1 setting."), tip);
        }
        assertTrue(worn > 0, "some of them lie over worn teeth");
    }

    @Test
    void zoomsPansAndShowsAllAgain() {
        hands.focus(strip());
        byte[] all = pixels();
        hands.type("+++");
        byte[] close = pixels();
        assertFalse(Arrays.equals(all, close));
        hands.key(0, SWT.ARROW_RIGHT);
        byte[] right = pixels();
        assertFalse(Arrays.equals(close, right));
        hands.key(0, SWT.ARROW_LEFT);
        assertArrayEquals(close, pixels());
        hands.type("---");
        assertArrayEquals(all, pixels(), "three steps back");
        wheel(200, 6);
        hands.picture(shell, "coverage-zoomed");
        assertFalse(Arrays.equals(all, pixels()));
        hands.type("0");
        assertArrayEquals(all, pixels());
        wheel(200, 30);
        byte[] closest = pixels();
        drag(200, 260);
        assertFalse(Arrays.equals(closest, pixels()), "dragged");
        assertEquals("", target().getText(), "a drag is no click");
        hands.picture(shell, "coverage-closest");
        strip().notifyListeners(SWT.MouseDoubleClick, new Event());
        hands.settle();
        assertArrayEquals(all, pixels());
    }

    @Test
    void followsTheCarriageWhileItIsDragged() {
        byte[] still = pixels();
        session.preview(Setting.of(200, 3));
        hands.settle();
        assertFalse(Arrays.equals(still, pixels()));
        session.preview(null);
        hands.settle();
        assertArrayEquals(still, pixels());
    }

    /** Base tooth 48 is met at the 24 indices from 25 to 48, which are 600 positions of 0.004 in. */
    @Test
    void comparesWithWhatIsSupposed() {
        byte[] before = pixels();
        session.suppose(List.of(new ToothMark(session.axis().getStages().get(0).getBaseRow(), 48, 48, WearKind.BARRED, "")));
        awaits("Reached within ±0.002 in: 40.0 % now, 37.5 % as supposed in the view Wear, with 2.400 in lost and nothing"
                + " more only over worn teeth.");
        assertFalse(Arrays.equals(before, pixels()));
        assertTrue(says("lost"), "the legend");
        hands.picture(shell, "coverage-supposed");
        session.suppose(List.of());
        awaits(FENCE);
        assertArrayEquals(before, pixels());
    }

    @Test
    void showsWhatASelectedMarkCosts() {
        byte[] before = pixels();
        bench.select(session.axis().getStages().get(0).getBaseRow().getWorn().get(0));
        awaits("Selected teeth 100 to 101: nothing lost, 2.500 in only over worn teeth.");
        assertFalse(Arrays.equals(before, pixels()));
        hands.picture(shell, "coverage-selected");
        bench.select(session.axis());
        awaits(FENCE);
        assertArrayEquals(before, pixels());
    }

    @Test
    void pointsOutOnTheDrawingWhereThePointerIs() {
        move(strip().getClientArea().width / 2);
        double inches = session.pointed().orElseThrow() / 25.4e12;
        assertEquals(48, inches, 0.25, "the middle of 96 in, as near as a pixel");
        hands.picture(shell, "coverage-pointed");
        strip().notifyListeners(SWT.MouseExit, new Event());
        assertTrue(session.pointed().isEmpty());
    }

    /** The editor selects something else before the view is told that no stage is left. */
    @Test
    void asksNothingOfAnAxisWithoutStages() {
        List<String> asked = new ArrayList<>();
        IJobChangeListener listener = new JobChangeAdapter() {
            @Override
            public void scheduled(IJobChangeEvent event) {
                if (Display.getCurrent() != null && session.analysis().hasErrors()) {
                    asked.add(event.getJob().getName());
                }
            }
        };
        Job.getJobManager().addJobChangeListener(listener);
        try {
            for (int stages = session.axis().getStages().size(); stages > 0; stages--) {
                Stage stage = session.axis().getStages().get(0);
                bench.select(stage);
                session.run(new RemoveElement(stage));
            }
            hands.until("the reason is there", () -> says("The axis has no stage"));
        } finally {
            Job.getJobManager().removeJobChangeListener(listener);
        }
        assertFalse(asked.contains("Coverage"), asked.toString());
    }

    @Test
    void saysWhyThereIsNothingToShow() {
        Stage rack = session.axis().getStages().get(0);
        session.run(new SetValue(rack, Literals.STAGE__PITCH, "nonsense", "Spoil the pitch"));
        hands.until("the reason is there", () -> says("can be drawn once this is mended"));
        hands.picture(shell, "coverage-error");
        session.history().undo();
        awaits(FENCE);
        bench.clear();
        hands.until("it asks for a stack", () -> says("Open a stack, and what it reaches"));
    }

    private void awaits(String sentence) {
        hands.until("it says " + sentence.substring(0, 30), () -> says(sentence));
        hands.settle();
    }

    private boolean says(String words) {
        return !hands.all(shell, Label.class, l -> l.isVisible() && l.getText().contains(words)).isEmpty();
    }

    private Text tolerance() {
        return hands.all(shell, Text.class, t -> t.isVisible() && t.getMessage().endsWith("(axis)")
                && t.getParent() == strip().getParent()).get(0);
    }

    private Text target() {
        return hands.the(shell, Text.class, t -> String.valueOf(t.getToolTipText()).startsWith("Where the carriage shall"));
    }

    private Canvas strip() {
        return hands.the(shell, Canvas.class, c -> c.getClass() == Canvas.class
                && hands.all(c.getParent(), Label.class, l -> l.getText().equals("Tolerance")).size() == 1);
    }

    private byte[] pixels() {
        hands.settle();
        Point size = strip().getSize();
        Image image = new Image(shell.getDisplay(), size.x, size.y);
        GC gc = new GC(image);
        assertTrue(strip().print(gc), "the strip cannot be printed on this system");
        gc.dispose();
        byte[] data = image.getImageData().data;
        image.dispose();
        return data;
    }

    private void mouse(int type, int x, int button) {
        Event event = new Event();
        event.x = x;
        event.y = strip().getClientArea().height / 2;
        event.button = button;
        event.count = type == SWT.MouseMove ? 0 : 1;
        strip().notifyListeners(type, event);
        hands.settle();
    }

    private void move(int x) {
        mouse(SWT.MouseMove, x, 0);
    }

    private void click(int x) {
        move(x);
        mouse(SWT.MouseDown, x, 1);
        mouse(SWT.MouseUp, x, 1);
    }

    private void drag(int from, int to) {
        move(from);
        mouse(SWT.MouseDown, from, 1);
        move((from + to) / 2);
        move(to);
        mouse(SWT.MouseUp, to, 1);
    }

    private void wheel(int x, int turns) {
        for (int i = 0; i < turns; i++) {
            Event event = new Event();
            event.x = x;
            event.y = 20;
            event.count = 3;
            strip().notifyListeners(SWT.MouseWheel, event);
        }
        hands.settle();
    }
}
