// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Setting;
import pitchstack.edit.ApplySetting;
import pitchstack.ui.tests.Names;

/**
 * Two printed stages of PLA, 20 teeth engaged each, 10 mm wide, scatter 30 µm, seats 20 µm, datum 10 µm, rows good to
 * 1000 ppm each by itself.
 *
 * <p>By hand. At index 0 no way is counted, so u² = 10² + 2·20²/(2·20) µm²: 10.95 µm, of which 10 repeat and 4.47
 * differ; times 1.96: 0.021, 0.020 and 0.0088 mm. Two PLA teeth of ISO 53, type A, give way by 0.7123 (bending) +
 * 2.0339 (shear) + 3.5990 (ground) over E·b each, E = 3 GPa: 2677 N/mm along the normal of a flank of 20°. With σ =
 * 30·√2 µm, half of the flanks bear at 0.398942·N·k·σ·sin 40° = 582.5 N, where the seat is within 1.96·σ/√40·1.167639 =
 * 15.4 µm, and the root bears 80.1 N of 1.218727/(b·m), m = 5/π mm: 6.1 MPa.
 */
class AccuracyViewTest {
    private AccuracyDesk desk;

    @BeforeEach
    void open(@TempDir Path folder) {
        desk = new AccuracyDesk(folder);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void saysWhatTheSettingShouldHoldAndWhatOfItRepeats() {
        desk.awaits("This setting should stand within ±0.021 mm of what is counted (95 %). ±0.020 mm repeats and can be"
                + " measured away; ±0.0088 mm differs each time.");
        assertEquals(1, desk.hands().all(desk.shell(), Label.class, l -> l.isVisible() && l.getText()
                .contains("nothing here is a"
                + " measurement"))
                .size(), "said once");
        Table table = desk.table("What");
        // 100, 10 and 10 of 120 µm²; u of a seat is 20/√40 = 3.16 µm.
        assertEquals(List.of("Datum", "10", "yes", "83 %"), AccuracyDesk.cells(table, 0).subList(0, 4));
        assertEquals(List.of("3.2", "no", "8 %"), AccuracyDesk.cells(table, 1).subList(1, 4));
        desk.hands().until("bars are drawn", () -> desk.inked("Bars of the budget"));
        desk.hands().picture(desk.shell(), "accuracy-budget");
    }

    @Test
    void followsTheStagesAndUndo() {
        desk.awaits("This setting should stand within ±0.021 mm");
        desk.session().run(new ApplySetting(desk.session().axis(), Setting.of(80, 0)));
        // 80 pitches of 5 mm good to 1000 ppm are 0.4 mm, times 1.96.
        desk.awaits("±0.78 mm repeats and can be measured away");
        desk.session().history().undo();
        desk.awaits("This setting should stand within ±0.021 mm");
        desk.session().run(new ApplySetting(desk.session().axis(), Setting.of(120, 0)));
        desk.awaits("“Rack” stands at index 120, where its rows do not meet; move it to an index from −8 to 88.");
    }

    @Test
    void findsTheWorstAtTheEndsOfTheRows() {
        desk.choose("Setting of the budget", 2);
        desk.awaitsWork("Every setting should stand within ");
        assertTrue(desk.says(farthest(0) + " · "), "the first stage at the farther end, whose way counts most: "
                + farthest(0));
    }

    private String farthest(int stage) {
        IndexRange range = desk.session().analysis().spec().stages().get(stage).rows().indices();
        int index = -range.first() > range.last() ? range.first() : range.last();
        return desk.session().analysis().spec().stages().get(stage).name() + " " + (index < 0 ? "−" + -index : index);
    }

    @Test
    void plansATypedPositionAndSaysWhatCannotBeRead() {
        desk.choose("Setting of the budget", 1);
        desk.awaits("Type a position, or pick one of the saved targets.");
        Combo position = desk.named(Combo.class, "Position");
        assertEquals(List.of("10.1 mm", "24.9 mm"), List.of(position.getItems()));
        position.setText("5 furlongs");
        desk.awaits("“furlongs” is not a unit of length here");
        position.setText("10.1");
        desk.awaits("10.100 mm (");
        desk.hands().focus(position);
        desk.hands().stroke(SWT.ESC);
        assertTrue(desk.says("10.100 mm ("), "nothing is stopped where nothing is worked out");
    }

    @Test
    void saysWhereTheNumbersComeFromAtAPressOfAButton() {
        desk.awaits("This setting should stand within");
        desk.table("What").setSelection(0);
        desk.table("What").notifyListeners(SWT.Selection, new Event());
        desk.push("&Where These Numbers Come From");
        Text sources = desk.named(Text.class, "Where the numbers come from");
        assertTrue(sources.getText().startsWith("Datum. It makes 10 µm (1 σ), normal, known by other knowledge than"
                + " readings"),
                sources.getText());
        assertTrue(sources.getText().contains("JCGM 100:2008"));
        assertTrue(sources.getText().contains("no preload is given; every flank is taken to bear"), sources.getText());
        desk.hands().picture(desk.shell(), "accuracy-sources");
        desk.push("&Where These Numbers Come From");
    }

    @Test
    void drawsTheErrorAlongTheTravel() {
        desk.page("Travel");
        desk.awaits("Along ");
        assertTrue(desk.says("at worst (95 %)."));
        desk.hands().until("the chart is drawn", () -> desk.inked("Error along the travel"));
        desk.hands().picture(desk.shell(), "accuracy-travel");
    }

    /** Nothing has been moved, so nothing has grown; 80 pitches of 5 mm of PLA, 68 ppm/K, over 13 K: 0.35 mm. */
    @Test
    void tellsWhatASeasonDoes() {
        desk.page("Warmth");
        desk.awaits("Over this season the same setting stays where it is.");
        desk.session().run(new ApplySetting(desk.session().axis(), Setting.of(80, 0)));
        desk.awaits("From 15 to 28 °C the same setting moves 350 µm (±");
        Text cold = desk.hands().the(desk.shell(), Text.class, t -> Names.of(t).startsWith("The coldest"));
        cold.setText("warm");
        desk.awaits("“warm” is not allowed; give a temperature from -40 to 80 °C.");
        cold.setText("15");
        desk.awaits("From 15 to 28 °C the same setting moves 350 µm (±");
        desk.hands().picture(desk.shell(), "accuracy-warmth");
    }

    @Test
    void namesEveryControlOfEveryPageAndReachesThemByTheKeyboard() {
        for (String page : AccuracyDesk.PAGES) {
            desk.page(page);
            assertEquals(List.of(), Names.missing(desk.shell()), page);
            desk.hands().settle();
            assertNotNull(desk.shell().getDisplay().getFocusControl(), page + " takes the focus");
        }
    }

    @Test
    void copiesTheChartAsAPictureOfTwiceTheSize() {
        desk.awaits("This setting should stand within");
        desk.hands().until("bars are drawn", () -> desk.inked("Bars of the budget"));
        Canvas chart = desk.named(Canvas.class, "Bars of the budget");
        desk.hands().focus(chart);
        desk.hands().chord(SWT.MOD1, 'c');
        Clipboard clipboard = new Clipboard(desk.shell().getDisplay());
        ImageData copied = (ImageData) clipboard.getContents(ImageTransfer.getInstance());
        clipboard.dispose();
        assertNotNull(copied, "a picture is on the clipboard");
        assertEquals(2 * chart.getClientArea().width, copied.width);
    }
}
