// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Setting;
import pitchstack.edit.ApplySetting;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.StageSource;
import pitchstack.ui.tests.Names;

/**
 * Two printed stages of PLA, 20 teeth engaged each, 10 mm wide, scatter 30 µm, seats 20 µm, datum 10 µm, rows good to 1000 ppm
 * each by itself.
 *
 * <p>By hand. At index 0 no way is counted, so u² = 10² + 2·20²/(2·20) µm²: 10.95 µm, of which 10 repeat and 4.47 differ; times
 * 1.96: 0.021, 0.020 and 0.0088 mm. Two PLA teeth of ISO 53, type A, give way by 0.7123 (bending) + 2.0339 (shear) + 3.5990
 * (ground) over E·b each, E = 3 GPa: 2677 N/mm along the normal of a flank of 20°. With σ = 30·√2 µm, half of the flanks bear at
 * 0.398942·N·k·σ·sin 40° = 582.5 N, where the seat is within 1.96·σ/√40·1.167639 = 15.4 µm, and the root bears 80.1 N of
 * 1.218727/(b·m), m = 5/π mm: 6.1 MPa.
 */
class AccuracyViewTest {
    private static final String ID = "pitchstack.ui.views.accuracy";
    private static final List<String> PAGES = List.of("Budget", "Travel", "Preload", "Warmth");

    private final Hands hands = new Hands();
    private Bench bench;
    private Shell shell;
    private Session session;

    @BeforeEach
    void open(@TempDir Path folder) {
        bench = new Bench(folder);
        shell = bench.shell();
        session = bench.open("printed", printed());
        bench.view(ID);
        page("Budget");
    }

    @AfterEach
    void close() {
        page("Budget");
        choose("Setting of the budget", 0);
        bench.clear();
        bench.view("org.eclipse.ui.views.PropertySheet");
    }

    private static Positioner printed() {
        Positioner positioner = Stacks.millimetres();
        Axis axis = positioner.getAxes().get(0);
        axis.setDatumUncertainty("0.01 mm");
        for (Stage stage : axis.getStages()) {
            stage.setSource(StageSource.PRINTED);
            stage.setMaterial("PLA");
            stage.setScatter("30 um");
            stage.setSeatScatter("20 um");
            stage.setFriction(0.3);
            stage.getRiderRow().setTeeth(20);
            for (Row row : List.of(stage.getBaseRow(), stage.getRiderRow())) {
                row.setScaleUncertaintyPpm(1000);
                row.setFaceWidth("10 mm");
            }
        }
        return positioner;
    }

    @Test
    void saysWhatTheSettingShouldHoldAndWhatOfItRepeats() {
        awaits("This setting should stand within ±0.021 mm of what is counted (95 %). ±0.020 mm repeats and can be measured away;"
                + " ±0.0088 mm differs each time.");
        assertEquals(1, hands.all(shell, Label.class, l -> l.isVisible() && l.getText().contains("nothing here is a measurement"))
                .size(), "said once");
        Table table = table("What");
        // 100, 10 and 10 of 120 µm²; u of a seat is 20/√40 = 3.16 µm.
        assertEquals(List.of("Datum", "10", "yes", "83 %"), cells(table, 0).subList(0, 4));
        assertEquals(List.of("3.2", "no", "8 %"), cells(table, 1).subList(1, 4));
        hands.until("bars are drawn", () -> inked("Bars of the budget"));
        hands.picture(shell, "accuracy-budget");
    }

    @Test
    void followsTheStagesAndUndo() {
        awaits("This setting should stand within ±0.021 mm");
        session.run(new ApplySetting(session.axis(), Setting.of(100, 0)));
        // 100 pitches of 5 mm good to 1000 ppm alone are 0.5 mm, times 1.96.
        awaits("This setting should stand within ±0.98 mm of what is counted");
        session.history().undo();
        awaits("This setting should stand within ±0.021 mm");
    }

    @Test
    void findsTheWorstAtTheEndsOfTheRows() {
        choose("Setting of the budget", 2);
        awaits("Every setting should stand within ");
        assertTrue(says(farthest(0) + " · "), "the first stage at the farther end, whose way counts most: " + farthest(0));
    }

    private String farthest(int stage) {
        IndexRange range = session.analysis().spec().stages().get(stage).rows().indices();
        int index = -range.first() > range.last() ? range.first() : range.last();
        return session.analysis().spec().stages().get(stage).name() + " " + (index < 0 ? "−" + -index : index);
    }

    @Test
    void plansATypedPositionAndSaysWhatCannotBeRead() {
        choose("Setting of the budget", 1);
        awaits("Type a position, or pick one of the saved targets.");
        Combo position = named(Combo.class, "Position");
        assertEquals(List.of("10.1 mm", "24.9 mm"), List.of(position.getItems()));
        position.setText("5 furlongs");
        awaits("“furlongs” is not a unit of length here");
        position.setText("10.1");
        awaits("10.100 mm (");
        hands.focus(position);
        hands.stroke(SWT.ESC);
        assertTrue(says("10.100 mm ("), "nothing is stopped where nothing is worked out");
    }

    @Test
    void saysWhereTheNumbersComeFromAtAPressOfAButton() {
        awaits("This setting should stand within");
        table("What").setSelection(0);
        table("What").notifyListeners(SWT.Selection, new Event());
        push("&Where These Numbers Come From");
        Text sources = named(Text.class, "Where the numbers come from");
        assertTrue(sources.getText().startsWith("Datum. It makes 10 µm (1 σ), normal, known by other knowledge than readings"),
                sources.getText());
        assertTrue(sources.getText().contains("JCGM 100:2008"));
        assertTrue(sources.getText().contains("no preload is given; every flank is taken to bear"), sources.getText());
        hands.picture(shell, "accuracy-sources");
        push("&Where These Numbers Come From");
    }

    @Test
    void movesPreloadAndTeethAsTheLawSays() {
        page("Preload");
        awaits("For half of the flanks to bear it takes 580 N");
        type("Preload", "582.5");
        awaits("“582.5” is not allowed; give a whole number from");
        type("Preload", "583");
        awaits("At 583 N, 50 % of the flanks bear. The errors of the teeth leave the seat within ±0.015 mm (95 %)");
        assertTrue(says("At the preload set the root of a tooth bears 6.1 MPa"));
        slide("Engaged teeth, slider", SWT.ARROW_RIGHT);
        hands.until("a tooth more", () -> named(Text.class, "Engaged teeth").getText().equals("21"));
        awaits("For half of the flanks to bear it takes 610 N");
        type("Engaged teeth", "20");
        type("Scatter", "84.9");
        awaits("For half of the flanks to bear it takes 1200 N");
        hands.until("the chart is drawn", () -> inked("Preload against bearing flanks and error"));
        hands.picture(shell, "accuracy-preload");
        push("As in the &File");
        awaits("For half of the flanks to bear it takes 580 N");
    }

    /** A slot that leaves half of the tooth makes two leaves: each a quarter as thick, so many times softer, and higher stressed. */
    @Test
    void showsWhatASlotSavesAndWhatItCosts() {
        page("Preload");
        awaits("For half of the flanks to bear it takes 580 N");
        double solid = number(cells(table("Tooth"), 0).get(2));
        slide("Slot, slider", SWT.END);
        hands.until("a slot", () -> !named(Text.class, "Slot").getText().equals("0.00"));
        hands.until("less preload", () -> number(cells(table("Tooth"), 0).get(2)) < solid / 2);
        assertEquals(solid, number(cells(table("Tooth"), 1).get(2)), 1e-9, "the solid tooth beside it stays");
        assertTrue(number(cells(table("Tooth"), 2).get(6)) > number(cells(table("Tooth"), 1).get(6)), "the slot costs strength");
    }

    /** At 20° and μ = 0.3: lifts at 1/0.0577 = 17.3 times the preload, and 54.8 % of it reaches the flanks. */
    @Test
    void tellsWhatFrictionDoes() {
        page("Preload");
        type("Preload", "100");
        awaits("a force along the travel lifts the row when it is more than 1700 N; 55 % of the preload reaches the flanks");
        type("Friction", "0.4");
        awaits("these flanks lock: no force along the travel, however large, lifts the row");
    }

    @Test
    void checksTheLawByChance() {
        page("Preload");
        awaits("For half of the flanks to bear it takes 580 N");
        type("Preload", "583");
        push("&Check by Chance");
        awaits("rows drawn by chance: ");
        assertTrue(says("and 95 % of the seats lie within ±0.015 mm. The law is off by "));
    }

    @Test
    void stopsTheCheckByEscape() {
        page("Preload");
        type("Engaged teeth", "200");
        Button check = hands.the(shell, Button.class, b -> b.getText().equals("&Check by Chance"));
        hands.focus(check);
        check.notifyListeners(SWT.Selection, new Event());
        hands.stroke(SWT.ESC);
        awaits("Stopped.");
    }

    @Test
    void drawsTheErrorAlongTheTravel() {
        page("Travel");
        awaits("Along ");
        assertTrue(says("at worst (95 %)."));
        hands.until("the chart is drawn", () -> inked("Error along the travel"));
        hands.picture(shell, "accuracy-travel");
    }

    /** Nothing has been moved, so nothing has grown; 100 pitches of 5 mm of PLA, 68 ppm/K, over 13 K: 0.44 mm. */
    @Test
    void tellsWhatASeasonDoes() {
        page("Warmth");
        awaits("Over this season the same setting stays where it is.");
        session.run(new ApplySetting(session.axis(), Setting.of(100, 0)));
        awaits("From 15 to 28 °C the same setting moves 440 µm (±");
        Text cold = hands.the(shell, Text.class, t -> Names.of(t).startsWith("The coldest"));
        cold.setText("warm");
        awaits("“warm” is not allowed; give a temperature from -40 to 80 °C.");
        cold.setText("15");
        awaits("From 15 to 28 °C the same setting moves 440 µm (±");
        hands.picture(shell, "accuracy-warmth");
    }

    @Test
    void namesEveryControlOfEveryPageAndReachesThemByTheKeyboard() {
        for (String page : PAGES) {
            page(page);
            assertEquals(List.of(), Names.missing(shell), page);
            hands.settle();
            assertNotNull(shell.getDisplay().getFocusControl(), page + " takes the focus");
        }
    }

    @Test
    void copiesTheChartAsAPictureOfTwiceTheSize() {
        awaits("This setting should stand within");
        hands.until("bars are drawn", () -> inked("Bars of the budget"));
        Canvas chart = named(Canvas.class, "Bars of the budget");
        hands.focus(chart);
        hands.chord(SWT.MOD1, 'c');
        Clipboard clipboard = new Clipboard(shell.getDisplay());
        ImageData copied = (ImageData) clipboard.getContents(ImageTransfer.getInstance());
        clipboard.dispose();
        assertNotNull(copied, "a picture is on the clipboard");
        assertEquals(2 * chart.getClientArea().width, copied.width);
    }

    private void awaits(String sentence) {
        hands.until("it says " + sentence.substring(0, Math.min(40, sentence.length())), () -> says(sentence));
    }

    private boolean says(String words) {
        return !hands.all(shell, Label.class, l -> l.isVisible() && l.getText().contains(words)).isEmpty();
    }

    private <T extends Control> T named(Class<T> kind, String name) {
        return hands.the(shell, kind, c -> Names.of(c).equals(name));
    }

    private Table table(String firstColumn) {
        return hands.the(shell, Table.class, t -> t.getColumnCount() > 0 && t.getColumn(0).getText().equals(firstColumn));
    }

    private static List<String> cells(Table table, int line) {
        return table.getItemCount() <= line ? List.of("", "", "", "", "", "", "")
                : IntStream.range(0, table.getColumnCount()).mapToObj(table.getItem(line)::getText).toList();
    }

    private static double number(String text) {
        return text.isEmpty() ? Double.NaN : Double.parseDouble(text.split(" ")[0]);
    }

    private void type(String field, String text) {
        named(Text.class, field).setText(text);
        hands.settle();
    }

    /** Moves a slider by a key, as a person does. */
    private void slide(String name, int key) {
        Scale slider = named(Scale.class, name);
        hands.focus(slider);
        hands.key(0, key);
    }

    private void choose(String combo, int item) {
        Combo choice = named(Combo.class, combo);
        choice.select(item);
        choice.notifyListeners(SWT.Selection, new Event());
    }

    private void push(String text) {
        Button button = hands.the(shell, Button.class, b -> b.getText().equals(text));
        if ((button.getStyle() & SWT.TOGGLE) != 0) {
            button.setSelection(!button.getSelection());
        }
        button.notifyListeners(SWT.Selection, new Event());
        hands.settle();
    }

    private void page(String title) {
        for (ToolBar bar : hands.all(shell, ToolBar.class, ToolBar::isVisible)) {
            List<ToolItem> pages = Arrays.stream(bar.getItems()).filter(item -> PAGES.contains(item.getText())).toList();
            for (ToolItem item : pages) {
                item.setSelection(item.getText().equals(title));
            }
            pages.stream().filter(ToolItem::getSelection).forEach(item -> item.notifyListeners(SWT.Selection, new Event()));
        }
        hands.settle();
    }

    /** Whether the first colour of charts is seen on a canvas. */
    private boolean inked(String name) {
        Canvas canvas = named(Canvas.class, name);
        Point size = canvas.getSize();
        Image image = new Image(canvas.getDisplay(), size.x, size.y);
        GC gc = new GC(canvas);
        gc.copyArea(image, 0, 0);
        gc.dispose();
        ImageData data = image.getImageData();
        image.dispose();
        int found = 0;
        for (int y = 0; y < data.height; y++) {
            for (int x = 0; x < data.width; x++) {
                RGB rgb = data.palette.getRGB(data.getPixel(x, y));
                found += Math.abs(rgb.red - 0x1f) < 3 && Math.abs(rgb.green - 0x4e) < 3 && Math.abs(rgb.blue - 0x79) < 3 ? 1 : 0;
            }
        }
        return found > 50;
    }
}
