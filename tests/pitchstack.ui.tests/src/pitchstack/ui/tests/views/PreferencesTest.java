// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.IPreferenceNode;
import org.eclipse.swt.SWT;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.service.prefs.BackingStoreException;
import pitchstack.edit.Session;
import pitchstack.edit.start.ShopDefaults;
import pitchstack.model.DisplayUnit;
import pitchstack.model.Positioner;
import pitchstack.model.Stage;
import pitchstack.ui.views.preferences.WindowColours;

/** What a person chooses for all files, and the list of keys. */
class PreferencesTest {
    private static final double LIGHT = 0.6;
    private static final double DARK = 0.1;

    private static final String SHOP = "pitchstack.ui.views.preferences.shop";

    private final Hands hands = new Hands();
    private final IEclipsePreferences kept = InstanceScope.INSTANCE.getNode(ShopDefaults.NODE);
    private Bench bench;

    @BeforeEach
    void open(@TempDir Path folder) throws BackingStoreException {
        kept.clear();
        bench = new Bench(folder);
    }

    @AfterEach
    void close() throws BackingStoreException {
        bench.clear();
        kept.clear();
    }

    private void preferences(Consumer<Shell> fill) {
        new Modal(hands).during("Preferences", () -> PreferencesUtil.createPreferenceDialogOn(bench.shell(), SHOP, null, null)
                .open(), fill);
        hands.settle();
    }

    private <T> T after(Shell dialog, String label, Class<T> kind) {
        Label before = hands.the(dialog, Label.class, l -> l.getText().replace("&", "").equals(label));
        var all = List.of(before.getParent().getChildren());
        return kind.cast(all.get(all.indexOf(before) + 1));
    }

    private void type(Shell dialog, String label, String text) {
        Text field = after(dialog, label, Text.class);
        hands.focus(field);
        hands.chord(SWT.CTRL, 'a');
        hands.key(0, SWT.DEL);
        hands.until("it is empty", () -> field.getText().isEmpty());
        hands.type(text);
        hands.until("it is typed", () -> text.equals(field.getText()));
    }

    private void choose(Shell dialog, String label, int choice) {
        Combo combo = after(dialog, label, Combo.class);
        hands.focus(combo);
        combo.select(choice);
        combo.notifyListeners(SWT.Selection, new Event());
    }

    private void accept(Shell dialog) {
        hands.focus(hands.the(dialog, Button.class, b -> b.getText().replace("&", "").startsWith("Apply and Close")));
        hands.chord(0, ' ');
    }

    @Test
    void keepsEachChoiceWithTheSettingsOfTheWindow() {
        preferences(dialog -> {
            choose(dialog, "Unit of new files", 1);
            choose(dialog, "Inches are shown as", 1);
            type(dialog, "Printed line width", "0.6");
            type(dialog, "Printer's bed, longest side", "10 in");
            type(dialog, "Release", "7");
            type(dialog, "Each tooth", "0.5");
            type(dialog, "Turning round", "2");
            choose(dialog, "Colours", 2);
            hands.picture(dialog, "preferences");
            accept(dialog);
        });
        assertEquals(Map.of("unit", "INCH", "fractions", "true", "lineWidth", "0.6 mm", "bed", "10 in",
                "releaseSeconds", "7", "perToothSeconds", "0.5", "reversalSeconds", "2", "theme", "DARK"), all());
        bench.command("pitchstack.ui.editor.new", Map.of());
        Session fresh = bench.editor().getAdapter(Session.class);
        assertEquals(DisplayUnit.INCH, fresh.positioner().getUnit());
        assertEquals("0.6 mm", fresh.positioner().getLineWidth());
        bench.select(fresh.axis());
        bench.command("pitchstack.ui.editor.addStage", Map.of());
        assertEquals(List.of(7.0, 7.0, 7.0), fresh.axis().getStages().stream().map(Stage::getReleaseSeconds).toList());
        preferences(dialog -> {
            assertEquals("7", after(dialog, "Release", Text.class).getText());
            assertEquals(1, after(dialog, "Unit of new files", Combo.class).getSelectionIndex());
        });
    }

    private Map<String, String> all() {
        try {
            return Stream.of(kept.keys()).collect(Collectors.toMap(key -> key, key -> kept.get(key, "")));
        } catch (BackingStoreException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void saysWhatIsWrongAndKeepsNothingOfIt() {
        preferences(dialog -> {
            type(dialog, "Release", "-3");
            assertTrue(hands.the(dialog, Label.class, l -> l.getText().contains("from 0 to 3600")).isVisible());
            assertFalse(hands.the(dialog, Button.class, b -> b.getText().contains("Close")).isEnabled());
        });
        assertEquals(Map.of(), all());
    }

    /** 25 1/4 in are 101 teeth of 1/4 in. */
    @Test
    void showsFractionsInAnOpenFileAtOnce() {
        Positioner positioner = Stacks.millimetres();
        positioner.setUnit(DisplayUnit.INCH);
        positioner.getAxes().get(0).getTargets().clear();
        positioner.getAxes().get(0).setTolerance("0.005 in");
        positioner.getAxes().get(0).setWantedStep("0.01 in");
        positioner.getAxes().get(0).getStages().get(0).setPitch("0.25 in");
        positioner.getAxes().get(0).getStages().get(0).setIndex(5);
        positioner.getAxes().get(0).getStages().get(1).setPitch("0.24 in");
        bench.open("inch", positioner);
        assertTrue(hands.the(bench.shell(), Label.class, l -> l.getText().equals("1.250 in")).isVisible());
        preferences(dialog -> {
            choose(dialog, "Inches are shown as", 1);
            accept(dialog);
        });
        assertTrue(hands.the(bench.shell(), Label.class, l -> l.getText().equals("1 1/4 in")).isVisible());
        assertFalse(bench.editor().isDirty(), "what is shown is no change of the file");
        assertEquals("25 1/4 in", bench.editor().getAdapter(Session.class).analysis().spec().scale().format(25 * 25_400_000_000_000L
                + 6_350_000_000_000L));
    }

    /**
     * The colours of a window that opens after the choice; contrast as WCAG 2.1 defines it, where 4.5 to 1 is level AA for
     * text. The toolkit reads them when a display is opened, so each choice is tried in a program of its own.
     */
    @Test
    void opensWindowsInTheColoursThatWereChosen() throws IOException, InterruptedException {
        RGB[] dark = coloursOf("DARK");
        RGB[] light = coloursOf("LIGHT");
        assertTrue(luminance(dark[0]) < 0.1, "a dark ground: " + dark[0]);
        assertTrue(luminance(light[0]) > 0.8, "a light ground: " + light[0]);
        assertTrue((luminance(dark[1]) + 0.05) / (luminance(dark[0]) + 0.05) >= 4.5, "text can be read: " + dark[1]);
        assertTrue((luminance(light[0]) + 0.05) / (luminance(light[1]) + 0.05) >= 4.5, "text can be read: " + light[1]);
    }

    /** The ground of the drawing and of a strip, and a folder of tabs, which belongs to the platform. */
    private List<RGB> grounds() {
        return Stream.of(hands.the(bench.shell(), FigureCanvas.class, canvas -> true),
                hands.the(bench.shell(), Canvas.class, canvas -> !(canvas instanceof FigureCanvas)
                        && canvas.getClass() == Canvas.class && (canvas.getStyle() & SWT.BORDER) != 0),
                hands.the(bench.shell(), CTabFolder.class, folder -> true)).map(this::ground).toList();
    }

    /** The colour of a place inside a control's ground, as it is seen: of a folder, which has a border, beside its tabs. */
    private RGB ground(Control control) {
        Rectangle seen = control.getDisplay().map(control.getParent(), null, control.getBounds());
        int x = seen.x + seen.width - 4;
        int y = seen.y + seen.height - 4;
        if (control instanceof CTabFolder folder) {
            Rectangle last = folder.getItem(folder.getItemCount() - 1).getBounds();
            x = seen.x + last.x + last.width + 8;
            y = seen.y + last.y + last.height / 2;
        }
        Image image = new Image(control.getDisplay(), 1, 1);
        GC gc = new GC(control.getDisplay());
        gc.copyArea(image, x, y);
        gc.dispose();
        ImageData data = image.getImageData();
        image.dispose();
        return data.palette.getRGB(data.getPixel(0, 0));
    }

    @Test
    void changesTheColoursOfWindowsThatAreOpen() throws IOException {
        bench.openFence();
        bench.view("pitchstack.ui.views.coverage");
        hands.colours(ShopDefaults.Theme.LIGHT);
        assertTrue(grounds().stream().allMatch(colour -> luminance(colour) > LIGHT), "light: " + grounds());
        preferences(dialog -> {
            choose(dialog, "Colours", 2);
            accept(dialog);
        });
        hands.colours(ShopDefaults.Theme.DARK);
        hands.picture(bench.shell(), "dark");
        assertTrue(grounds().stream().allMatch(colour -> luminance(colour) < DARK), "dark: " + grounds());
        preferences(dialog -> {
            choose(dialog, "Colours", 1);
            accept(dialog);
        });
        hands.colours(ShopDefaults.Theme.LIGHT);
        assertTrue(grounds().stream().allMatch(colour -> luminance(colour) > LIGHT), "light again: " + grounds());
    }

    private static RGB[] coloursOf(String theme) throws IOException, InterruptedException {
        String path = Stream.of(ColourProbe.class, WindowColours.class, ShopDefaults.class, SWT.class)
                .map(known -> known.getProtectionDomain().getCodeSource().getLocation().getPath())
                .flatMap(place -> Stream.of(place, place + "/target/classes")).collect(Collectors.joining(File.pathSeparator));
        Process probe = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp", path,
                ColourProbe.class.getName(), theme).redirectError(ProcessBuilder.Redirect.DISCARD).start();
        String said = new String(probe.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, probe.waitFor(), said);
        return Stream.of(said.strip().split("\\R")).map(line -> line.split(" "))
                .map(parts -> new RGB(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]), Integer.parseInt(parts[2])))
                .toArray(RGB[]::new);
    }

    private static double luminance(RGB colour) {
        return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
    }

    private static double linear(int part) {
        double share = part / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    @Test
    void hasNoPagesOfThePlatform() {
        assertEquals(List.of("pitchstack.ui.views.preferences.shop", "pitchstack.ui.views.preferences.keys"),
                Stream.of(PlatformUI.getWorkbench().getPreferenceManager().getRootSubNodes()).map(IPreferenceNode::getId)
                        .sorted(java.util.Comparator.reverseOrder()).toList());
    }

    @Test
    void listsTheKeysThatAreRegistered() {
        new Modal(hands).during("Preferences", () -> bench.command("pitchstack.ui.views.showKeys", Map.of()), dialog -> {
            Table table = hands.the(dialog, Table.class, t -> t.getColumnCount() == 3);
            hands.picture(dialog, "keys");
            assertEquals("Ctrl+O", key(table, "Open File…"));
            assertEquals("F1", key(table, "User Guide"));
            assertEquals("Ctrl+N", key(table, "New Small Stack"));
            assertEquals("Shift+Ctrl+N", key(table, "Design a New Stack…"));
            assertTrue(Stream.of(table.getItems()).noneMatch(item -> item.getText(0).matches(".*(Perspective|Wizard|Editor).*")),
                    "no words for programmers");
            hands.focus(hands.the(dialog, Text.class, t -> t.getMessage().startsWith("part of")));
            hands.type("zoom in");
            assertTrue(Stream.of(table.getItems()).allMatch(item -> item.getText(0).contains("Zoom In")));
            assertTrue(table.getItemCount() > 0);
        });
    }

    private static String key(Table table, String command) {
        for (TableItem item : table.getItems()) {
            if (item.getText(0).equals(command)) {
                return item.getText(1);
            }
        }
        throw new AssertionError(command + " is not listed");
    }
}
