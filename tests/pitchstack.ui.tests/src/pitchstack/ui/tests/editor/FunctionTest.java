// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.Setting;
import pitchstack.edit.MoveStage;
import pitchstack.edit.Session;
import pitchstack.edit.SessionListener.Change;
import pitchstack.model.Positioner;
import pitchstack.ui.editor.places.Bands;
import pitchstack.ui.editor.places.Mapping;

/** What the drawing shows of how a stack works: the proposed move, the positions nearby, the findings. */
class FunctionTest {
    private static final int MOST_PLAYS = 5;
    /** The colour of the carriage's pointer on a light ground. */
    private static final RGB MARK = new RGB(0x00, 0x7A, 0x6C);

    private static final double MM = 1e12;

    @TempDir
    private Path folder;
    private IEditorPart editor;
    private Session session;
    private Sight sight;

    private void open(Positioner positioner) throws IOException {
        editor = Desk.draw(positioner, folder);
        session = editor.getAdapter(Session.class);
        sight = new Sight(session);
    }

    @AfterEach
    void close() {
        Desk.closeAll();
    }

    /** The move to 10.1 mm: three teeth of 5 mm forward, one of 4.9 mm back. */
    private PlannedSetting move() {
        PlanRequest request = new PlanRequest(10_100_000_000_000L, 0, session.analysis().current(), WornPolicy.AVOID, 0);
        return ((Answer.Reached) session.analysis().planner().orElseThrow().plan(request)).best();
    }

    private static String note() {
        return Desk.controls(Desk.shell(), control -> control instanceof Label label && label.isVisible()
                && label.getText().startsWith("Step ")).stream().map(label -> ((Label) label).getText()).findFirst().orElse("");
    }

    @Test
    void playsAProposedMoveStepByStepAndLeavesTheDocumentAsItIs() throws IOException {
        open(Stacks.pair());
        session.propose(move());
        assertEquals(Setting.of(3, -1), session.proposal().orElseThrow().setting());
        List<Setting> seen = new ArrayList<>();
        List<String> said = new ArrayList<>();
        session.addListener(change -> {
            if (change == Change.PREVIEW) {
                seen.add(session.shown());
                said.add(note());
            }
        });
        List<String> told = List.of("Step 1 of 2: lift “Rack”", "Step 1 of 2: seat “Rack” at +3",
                "Step 2 of 2: seat “Fine stage” at −1");
        // What is told changes while nobody looks on a busy machine; each play tells the same.
        for (int plays = 0; plays < MOST_PLAYS && !toldAll(told, said); plays++) {
            Desk.command("pitchstack.ui.editor.play");
            listenToTheEnd(said);
        }
        assertEquals(List.of(Setting.of(0, 0), Setting.of(1, 0), Setting.of(2, 0), Setting.of(3, 0), Setting.of(3, -1)),
                seen.stream().distinct().toList(), "tooth by tooth, and back where the stages stand");
        assertTrue(toldAll(told, said), said.toString());
        assertEquals(Setting.of(0, 0), session.shown());
        assertFalse(editor.isDirty());
    }

    private static boolean toldAll(List<String> told, List<String> said) {
        return told.stream().allMatch(begin -> said.stream().anyMatch(note -> note.startsWith(begin)));
    }

    /** Notes what is said between any two things that the window does, until the move has been played. */
    private void listenToTheEnd(List<String> said) {
        long end = System.currentTimeMillis() + Desk.PATIENCE_MS;
        while (session.isPlaying()) {
            assertTrue(System.currentTimeMillis() < end, "it plays for ever");
            said.add(note());
            if (!Display.getCurrent().readAndDispatch()) {
                Desk.sleep(5);
            }
        }
    }

    @Test
    void pausesAndGoesOnStepByStep() throws IOException {
        open(Stacks.pair());
        session.propose(move());
        Keyboard.press("F7");
        Desk.until("the first step is over", () -> note().endsWith(", paused"));
        assertEquals(Setting.of(3, 0), session.shown());
        Desk.sleep(300);
        Desk.settle();
        assertEquals(Setting.of(3, 0), session.shown(), "it waits");
        Desk.command("pitchstack.ui.editor.play");
        assertTrue(note().startsWith("Step 2 of 2: ") && !note().endsWith(", paused"), note());
        Desk.command("pitchstack.ui.editor.play");
        assertTrue(note().endsWith(", paused"), note());
        session.run(new MoveStage(session.axis().getStages().get(0), 7));
        Desk.command("pitchstack.ui.editor.play");
        Desk.until("a change of the document ends it", () -> note().isEmpty());
        assertEquals(Setting.of(7, 0), session.shown());
    }

    @Test
    void showsWhereTheBodiesWouldStand() throws IOException {
        open(Stacks.pair());
        Desk.settle();
        // A tall outline in the pointer's colour, right of where the carriage stands now.
        int before = marked(sight.bodyTop(1));
        PlanRequest far = new PlanRequest(200_000_000_000_000L, 0, session.analysis().current(), WornPolicy.AVOID, 0);
        session.propose(((Answer.Reached) session.analysis().planner().orElseThrow().plan(far)).best());
        Desk.until("the ghost is drawn", () -> marked(sight.bodyTop(1)) > before);
        assertTrue(Desk.controls(Desk.shell(), control -> control instanceof Label label && label.isVisible()
                && label.getText().equals("dashed: 200.000 mm")).size() == 1, "and it is said what it is");
        session.propose(null);
        Desk.until("the ghost is gone", () -> marked(sight.bodyTop(1)) == before);
    }

    /** How many pixels of a few lines of the canvas have the pointer's colour. */
    /** Half the body's width further on, an edge of the outline stands in the middle of its name: 15 teeth of 5 mm. */
    @Test
    void drawsNoOutlineThroughAName() throws IOException {
        open(Stacks.pair());
        Desk.settle();
        Point middle = sight.body(0);
        int before = marked(sight.bodyTop(0));
        PlanRequest half = new PlanRequest(75_000_000_000_000L, 0, session.analysis().current(), WornPolicy.AVOID, 0);
        session.propose(((Answer.Reached) session.analysis().planner().orElseThrow().plan(half)).best());
        Desk.until("the ghost is drawn", () -> marked(sight.bodyTop(0)) > before);
        assertEquals(0, marked(middle.y, middle.x - 14, middle.x + 14), "in the name");
        assertTrue(marked(sight.bodyTop(0), middle.x - 14, middle.x + 14) > 10, "above the name");
    }

    private static int marked(int y) {
        return marked(y, Mapping.GUTTER, Desk.canvas().getClientArea().width);
    }

    /** Pixels of the pointer's colour within six of a height. */
    private static int marked(int y, int from, int to) {
        ImageData picture = picture();
        int count = 0;
        for (int line = y - 6; line <= y + 6; line++) {
            for (int x = from; x < to; x++) {
                count += isMark(picture, x, line) ? 1 : 0;
            }
        }
        return count;
    }

    private static boolean isMark(ImageData picture, int x, int y) {
        return picture.palette.getRGB(picture.getPixel(x, y)).equals(MARK);
    }

    private static ImageData picture() {
        Desk.settle();
        FigureCanvas canvas = Desk.canvas();
        Image image = new Image(canvas.getDisplay(), canvas.getClientArea().width, canvas.getClientArea().height);
        GC gc = new GC(canvas);
        gc.copyArea(image, 0, 0);
        gc.dispose();
        ImageData data = image.getImageData();
        image.dispose();
        return data;
    }

    /** From the datum both stages reach every 0.1 mm, the difference of their pitches; a dot stands at each. */
    @Test
    void marksThePositionsThatCanBeReachedBesideTheCarriage() throws IOException {
        open(Stacks.pair());
        int carriage = sight.px(0);
        for (int i = 0; i < 40; i++) {
            Desk.wheel(carriage, 100, 1, SWT.MOD1);
        }
        // The finest tooth, 4.9 mm, is 240 pixels now, so that dots stand 4.898 pixels apart.
        double step = 240 / 49.0;
        int y = Bands.RULER - 3;
        Desk.until("the dots are drawn", () -> dots(y, step) == 20);
        assertTrue(Math.abs(step - 4.898) < 0.001);
    }

    /** Fitted, a dot stands every four pixels or so, and none beyond what the rows reach; what is left out is said. */
    @Test
    void thinsThemOutWhereTheyWouldTouchAndSaysSo() throws IOException {
        open(Stacks.pair());
        int y = Bands.RULER - 2;
        Desk.until("the dots are drawn", () -> bars(picture(), y) > 60);
        // From −18 · 5 − 48 · 4.9 mm to 88 · 5 + 48 · 4.9 mm; the rows are drawn further, since they have a length.
        ImageData picture = picture();
        for (int x = Mapping.GUTTER + 2; x < picture.width; x++) {
            boolean within = x >= sight.px(-325.2 * MM) - 1 && x <= sight.px(675.2 * MM) + 2;
            assertTrue(within || !isMark(picture, x, y), "pixel " + x);
        }
        Desk.mouse(SWT.MouseMove, sight.px(300 * MM), 8, 0, 0);
        assertTrue(Desk.canvas().getToolTipText().contains("but not all of them"), Desk.canvas().getToolTipText());
    }

    /** How many separate stretches of a line of the canvas have the pointer's colour. */
    private static int bars(ImageData picture, int y) {
        int count = 0;
        for (int x = Mapping.GUTTER + 1; x < picture.width; x++) {
            count += isMark(picture, x, y) && !isMark(picture, x - 1, y) ? 1 : 0;
        }
        return count;
    }

    /** How many of the ten nearest places to either side have a dot, with bare ruler between it and the next. */
    private static int dots(int y, double step) {
        ImageData picture = picture();
        int middle = pointer(picture);
        int count = 0;
        for (int k = -12; k <= 12; k++) {
            int x = middle + (int) Math.round(k * step);
            boolean dot = Math.abs(k) > 2 && (isMark(picture, x, y) || isMark(picture, x - 1, y) || isMark(picture, x + 1, y));
            boolean bare = !isMark(picture, x + 2, y) || !isMark(picture, x + 3, y);
            count += dot && bare ? 1 : 0;
        }
        return count;
    }

    /** The tip of the carriage's pointer. */
    private static int pointer(ImageData picture) {
        int y = Bands.RULER - 10;
        int first = -1;
        int last = -1;
        for (int x = Mapping.GUTTER; x < picture.width; x++) {
            if (isMark(picture, x, y)) {
                first = first < 0 ? x : first;
                last = x;
            }
        }
        return (first + last) / 2;
    }

    @Test
    void saysWhatWasFoundWhereItIs() throws IOException {
        Positioner positioner = Stacks.barred();
        positioner.getAxes().get(0).getStages().get(0).setIndex(40);
        positioner.getAxes().get(0).setHigh("100 mm");
        open(positioner);
        Point label = sight.label(0);
        Desk.mouse(SWT.MouseMove, label.x, label.y, 0, 0);
        String tip = Desk.canvas().getToolTipText();
        assertTrue(tip.contains("Stage “Rack” stands at index 40 over barred teeth"), tip);
        Point upper = sight.label(1);
        Desk.mouse(SWT.MouseMove, upper.x, upper.y, 0, 0);
        assertFalse(Desk.canvas().getToolTipText().contains("barred"), Desk.canvas().getToolTipText());
        Point base = sight.label(-1);
        Desk.mouse(SWT.MouseMove, base.x, base.y, 0, 0);
        assertTrue(Desk.canvas().getToolTipText().contains("100.000 mm beyond the stop at 100.000 mm"),
                Desk.canvas().getToolTipText());
    }
}
