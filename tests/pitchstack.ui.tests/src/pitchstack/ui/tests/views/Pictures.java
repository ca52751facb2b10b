// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.eclipse.ui.views.IViewDescriptor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.Edit;
import pitchstack.edit.Session;
import pitchstack.edit.start.ShopDefaults.Theme;
import pitchstack.model.Stage;
import pitchstack.ui.views.welcome.Examples;

/**
 * Takes the pictures of the user guide. It is no test of anything and is run by {@code releng/pictures} alone. A new view
 * needs a line in {@link #VIEWS}; a view of the workbench that is in no line is reported. To look at all of them in other
 * colours or sizes, set {@code pictures.theme} to DARK, or {@code pictures.width} and {@code pictures.height}.
 */
class Pictures {
    /** Something for the checks to find. */
    private record FewTeeth(Stage stage) implements Edit {
        @Override
        public String label() {
            return "few teeth";
        }

        @Override
        public void apply() {
            stage.setMinimumEngaged(2);
        }
    }

    /**
     * A view.
     *
     * @param id its id
     * @param name of the picture
     * @param waitMs how long its work takes at most
     */
    private record View(String id, String name, int waitMs) { }

    /** All views but those that are pictured with something done in them first. */
    private static final List<View> VIEWS = List.of(new View("org.eclipse.ui.views.PropertySheet", "properties", 500),
            new View("org.eclipse.ui.views.ContentOutline", "outline", 500),
            new View("pitchstack.ui.views.list", "target-list", 2500), new View("pitchstack.ui.views.wear", "wear", 2500));
    /** Those, and the guide itself. */
    private static final List<String> OTHERS = List.of("pitchstack.ui.views.target", "pitchstack.ui.views.coverage",
            "pitchstack.ui.views.findings", "pitchstack.ui.views.tour", "pitchstack.ui.views.guide",
            "pitchstack.ui.views.accuracy", "pitchstack.ui.views.runs");
    private static final int WIDTH = Integer.getInteger("pictures.width", 1280);
    private static final int HEIGHT = Integer.getInteger("pictures.height", 800);

    private final Hands hands = new Hands();
    private final File folder = new File(System.getProperty("pictures", "target/pictures"));
    private Bench bench;

    @BeforeEach
    void open(@TempDir Path temporary) {
        bench = new Bench(temporary);
        hands.colours(Theme.valueOf(System.getProperty("pictures.theme", "LIGHT")));
        bench.shell().setBounds(0, 0, WIDTH, HEIGHT);
        bench.page().resetPerspective();
        hands.settle();
    }

    @AfterEach
    void close() {
        bench.clear();
    }

    private Session fence() {
        bench.command("pitchstack.ui.editor.openCopy",
                Map.of("path", Examples.file("cross-cut-fence").orElseThrow().toString()));
        return bench.editor().getAdapter(Session.class);
    }

    /** A window without the frame that a window manager would put around it. */
    private static Rectangle inside(Shell shell) {
        Rectangle inside = shell.getDisplay().map(shell, null, shell.getClientArea());
        Rectangle bounds = shell.getBounds();
        return new Rectangle(bounds.x, bounds.y, inside.width, inside.y + inside.height - bounds.y);
    }

    private Rectangle window() {
        return inside(bench.shell());
    }

    private void keep(Rectangle area, String name) {
        hands.settle();
        hands.picture(area, folder, name);
    }

    /** The folder of tabs around what has the focus. */
    private void keepPart(String name) {
        hands.settle();
        Control control = bench.shell().getDisplay().getFocusControl();
        while (control != null && !(control instanceof CTabFolder)) {
            control = control.getParent();
        }
        assertNotNull(control, name + " has no tab");
        keepPart(control, name);
    }

    private void keepPart(Control folder, String name) {
        keep(bench.shell().getDisplay().map(folder.getParent(), null, folder.getBounds()), name);
    }

    private void waitFor(int ms) {
        long end = System.currentTimeMillis() + ms;
        while (System.currentTimeMillis() < end) {
            hands.settle();
        }
    }

    @Test
    void ofTheWindowAndEveryView() {
        Session session = fence();
        IViewPart target = bench.view("pitchstack.ui.views.target");
        target.setFocus();
        waitFor(500);
        hands.type("37.63");
        hands.until("the answer is there", () -> !hands.all(bench.shell(), Text.class,
                t -> t.isVisible() && t.getText().equals("37.63")).isEmpty());
        waitFor(1500);
        keepPart("target");
        bench.view("pitchstack.ui.views.coverage");
        waitFor(2000);
        keepPart("coverage");
        bench.page().activate(bench.editor());
        bench.select(session.axis().getStages().get(1));
        waitFor(500);
        keep(window(), "window");
        keepPart("drawing");
        session.run(new FewTeeth(session.axis().getStages().get(1)));
        bench.view("pitchstack.ui.views.findings");
        waitFor(500);
        keepPart("findings");
        session.history().undo();
        for (View view : VIEWS) {
            bench.view(view.id());
            waitFor(view.waitMs());
            keepPart(view.name());
        }
        bench.command("pitchstack.ui.views.showTour", Map.of());
        keepPart("tour");
    }

    /** Two pages of the view Accuracy, as large as the window. */
    @Test
    void ofTheAccuracy() {
        bench.command("pitchstack.ui.editor.openCopy",
                Map.of("path", Examples.file("slide-plate").orElseThrow().toString()));
        IViewPart view = bench.view("pitchstack.ui.views.accuracy");
        waitFor(500);
        bench.page().toggleZoom(bench.page().getReference(view));
        for (Map.Entry<String, String> page : Map.of("Budget", "accuracy", "Preload", "accuracy-preload").entrySet()) {
            hands.page(bench.shell(), AccuracyDesk.PAGES, page.getKey());
            waitFor(2500);
            keepPart(page.getValue());
        }
        bench.page().toggleZoom(bench.page().getReference(view));
    }

    @Test
    void ofTheMeasurements() {
        bench.command("pitchstack.ui.editor.openCopy",
                Map.of("path", Examples.file("slide-plate").orElseThrow().toString()));
        String title = bench.view("pitchstack.ui.views.runs").getTitle();
        hands.page(bench.shell(), MeasurementsTest.PAGES, "Pitches");
        waitFor(4000);
        keepPart(hands.the(bench.shell(), CTabFolder.class,
                f -> f.getSelection() != null && f.getSelection().getText().equals(title)), "measurements");
        hands.page(bench.shell(), MeasurementsTest.PAGES, "Readings");
    }

    /** The workbench's own views besides ours are of its, and nobody is shown them. */
    @Test
    void leaveOutNoView() {
        List<String> pictured = Stream.concat(VIEWS.stream().map(View::id), OTHERS.stream()).toList();
        assertEquals(List.of(), Stream.of(PlatformUI.getWorkbench().getViewRegistry().getViews())
                .map(IViewDescriptor::getId).filter(id -> id.startsWith("pitchstack.") && !pictured.contains(id)).toList());
    }

    @Test
    void ofTheDialogs() {
        new Modal(hands).during("Preferences", () -> PreferencesUtil.createPreferenceDialogOn(bench.shell(),
                "pitchstack.ui.views.preferences.shop", null, null).open(), dialog -> keep(inside(dialog), "preferences"));
        new Modal(hands).during("Preferences", () -> bench.command("pitchstack.ui.views.showKeys", Map.of()),
                dialog -> keep(inside(dialog), "keys"));
        String home = System.getProperty("user.home");
        System.setProperty("user.home", "/home");
        new Modal(hands).during("Design a New Stack", () -> bench.command("pitchstack.ui.views.design", Map.of()), this::design);
        System.setProperty("user.home", home);
    }

    private void design(Shell dialog) {
        Consumer<String> type = text -> {
            hands.chord(SWT.CTRL, 'a');
            hands.type(text);
        };
        choose(dialog, "inches");
        hands.focus(texts(dialog, 0));
        type.accept("96");
        hands.focus(texts(dialog, 1));
        type.accept("0.010");
        choose(dialog, "circular pitch in inches");
        hands.focus(texts(dialog, 2));
        type.accept("1/4");
        keep(inside(dialog), "design");
        hands.focus(hands.the(dialog, Button.class, b -> b.getText().replace("&", "").startsWith("Next")));
        hands.chord(0, ' ');
        hands.until("it is worked out", () -> !hands.all(dialog, Text.class,
                t -> t.isVisible() && t.getText().contains("finest step everywhere")).isEmpty());
        keep(inside(dialog), "design-result");
    }

    private Text texts(Shell dialog, int number) {
        return hands.all(dialog, Text.class, t -> t.isVisible() && t.getEditable()).get(number);
    }

    private void choose(Shell dialog, String choice) {
        Combo combo = hands.the(dialog, Combo.class, c -> c.indexOf(choice) >= 0);
        combo.select(combo.indexOf(choice));
        combo.notifyListeners(SWT.Selection, new Event());
    }

    @Test
    void ofTheWelcomePage() {
        bench.command("org.eclipse.ui.help.quickStartAction", Map.of());
        waitFor(500);
        keep(window(), "welcome");
        var welcome = PlatformUI.getWorkbench().getIntroManager();
        welcome.closeIntro(welcome.getIntro());
    }

    @Test
    void ofTheOtherExamples() {
        for (String name : new String[] {"grid-plate", "index-table"}) {
            bench.command("pitchstack.ui.editor.openCopy", Map.of("path", Examples.file(name).orElseThrow().toString()));
            waitFor(1500);
            keep(window(), name);
        }
    }
}
