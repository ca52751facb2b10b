// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.Session;
import pitchstack.model.MeasurementRun;
import pitchstack.model.PrintSetup;
import pitchstack.model.Reading;
import pitchstack.model.Stage;
import pitchstack.ui.tests.Names;
import pitchstack.ui.tests.editor.FileChooser;

/**
 * Runs are typed, pasted, imported, fitted and accepted. The device is made up: a 5 mm rack that is 200 ppm long, 5.001 mm,
 * and a 4.9 mm pair that is 800 ppm long, 4.90392 mm. Every setting is read once 1 µm too high and once 1 µm too low, so
 * that a least-squares fit finds exactly these.
 */
class MeasurementsTest {
    private static final double RACK_MM = 5.001;
    private static final double FINE_MM = 4.90392;
    private static final int[][] SETTINGS = {{0, 0}, {10, 0}, {20, 0}, {0, 5}, {10, 5}};
    static final List<String> PAGES = List.of("Readings", "Repeats", "Pitches", "Print Scale");

    private final Hands hands = new Hands();
    @TempDir
    private Path folder;
    private Bench bench;
    private Shell shell;
    private Session session;

    @BeforeEach
    void open() {
        bench = new Bench(folder);
        shell = bench.shell();
        session = bench.open("Measured", Stacks.millimetres());
        bench.view("pitchstack.ui.views.runs");
        page("Readings");
    }

    @AfterEach
    void close() {
        page("Readings");
        bench.clear();
        bench.view("pitchstack.ui.views.target");
    }

    /** The run as a table, by the closed form. */
    private static String table(String separator) {
        StringBuilder text = new StringBuilder(String.join(separator, "Stage 1", "Stage 2", "direction", "position (mm)") + "\n");
        for (int[] setting : SETTINGS) {
            double truth = setting[0] * RACK_MM + setting[1] * FINE_MM;
            text.append(row(separator, setting, "up", truth + 0.001)).append(row(separator, setting, "up", truth - 0.001));
        }
        return text.toString();
    }

    private static String row(String separator, int[] setting, String direction, double positionMm) {
        return String.join(separator, "" + setting[0], "" + setting[1], direction,
                String.format(Locale.ROOT, "%.5f", positionMm)) + "\n";
    }

    @Test
    void beginsARunAndTakesReadingsFromTheKeyboard() {
        assertTrue(says("New Run begins a run of measurements"));
        push("&New Run");
        hands.until("there is a run", () -> session.axis().getRuns().size() == 1);
        hands.until("its facts are shown", () -> !hands.all(shell, Text.class,
                t -> t.isVisible() && "What it was measured with.".equals(t.getToolTipText())).isEmpty());
        hands.settle();
        hands.focus(readings());
        hands.key(0, SWT.INSERT);
        hands.until("its reading is typed", () -> !cells(readings()).isEmpty());
        hands.type("ten");
        hands.enter(0);
        hands.until("it is refused", () -> says("“ten” is not a length"));
        hands.chord(SWT.MOD1, 'a');
        hands.type("50.01");
        hands.enter(0);
        hands.until("it is taken", () -> values().equals("50.01 mm"));
        hands.key(0, SWT.INSERT);
        hands.until("the next is typed", () -> !cells(readings()).isEmpty());
        hands.type("-3.5 um");
        hands.enter(0);
        hands.until("it is taken", () -> values().equals("50.01 mm, -3.5 um"));
        hands.picture(shell, "runs-typed");
        for (int i = 0; i < 5; i++) {
            hands.chord(SWT.MOD1, 'z');
        }
        hands.until("all is taken back", () -> session.axis().getRuns().isEmpty());
        assertFalse(session.isDirty());
    }

    @Test
    void typesWhenAndWithWhatItWasMeasured() {
        push("&New Run");
        Text instrument = hands.the(shell, Text.class, t -> "What it was measured with.".equals(t.getToolTipText()));
        hands.focus(instrument);
        hands.type("caliper");
        hands.enter(0);
        hands.until("it is taken", () -> "caliper".equals(run().getInstrument()));
        Text temperature = hands.the(shell, Text.class, t -> String.valueOf(t.getToolTipText()).startsWith("How warm"));
        hands.focus(temperature);
        hands.chord(SWT.MOD1, 'a');
        hands.type("200");
        hands.enter(0);
        hands.until("it is refused", () -> says("“200” is not allowed for temperature (°C); give a number from −40 to 120."));
        hands.chord(SWT.MOD1, 'a');
        hands.type("23.5");
        hands.enter(0);
        hands.until("it is taken", () -> run().getTemperatureC() == 23.5);
    }

    @Test
    void pastesATableFitsAcceptsAndTakesItBack() {
        paste(table("\t"));
        hands.until("it is listed", () -> readings().getItemCount() == 10);
        assertEquals("Paste 10 readings", session.history().getUndoCommand().getLabel());
        page("Pitches");
        hands.until("it is fitted", () -> pitches().getItemCount() == 2);
        assertTrue(pitches().getItem(0).getText(1).startsWith("0.0200 % long, ±0.00"), pitches().getItem(0).getText(1));
        assertTrue(pitches().getItem(1).getText(1).startsWith("0.0800 % long, ±0.00"), pitches().getItem(1).getText(1));
        hands.until("it says what that buys", () -> says("Of 2 targets 2 keep the tolerance"));
        hands.picture(shell, "runs-fit");
        push("&Accept");
        hands.until("it is taken over", () -> Math.abs(stage(1).getCorrectionPpm() - 800) < 0.01);
        assertEquals(200, stage(0).getCorrectionPpm(), 0.01);
        assertEquals(5_001_000_000_000L, session.analysis().spec().stages().get(0).pitch(), 1_000_000, "the planner uses it");
        hands.chord(SWT.MOD1, 'z');
        hands.until("it is taken back as one change", () -> stage(0).getCorrectionPpm() == 0
                && stage(1).getCorrectionPpm() == 0 && stage(0).getCorrectionRun() == null);
        session.history().redo();
        hands.until("it is there again", () -> stage(0).getCorrectionRun() == run() && stage(1).getCorrectionRun() == run());
    }

    /** Indices 0, 10 and 20 of the rack are read twice while nothing else moves, and the fit leaves nothing of their means. */
    @Test
    void drawsAndListsTheErrorsOfSingleTeeth() {
        paste(table("\t"));
        hands.until("it is listed", () -> readings().getItemCount() == 10);
        page("Pitches");
        hands.until("it is fitted", () -> pitches().getItemCount() == 2);
        Combo beside = hands.the(shell, Combo.class, c -> c.indexOf("Errors of single teeth") >= 0);
        beside.select(beside.indexOf("Errors of single teeth"));
        beside.notifyListeners(SWT.Selection, new Event());
        hands.until("they are listed", () -> !teeth().isEmpty() && teeth().get(0).getItemCount() == 3);
        assertEquals("20", teeth().get(0).getItem(2).getText(1));
        hands.until("they are drawn", () -> hands.all(shell, Canvas.class, Canvas::isVisible).stream().anyMatch(canvas ->
                Names.of(canvas).startsWith("Errors of single teeth by index")));
        hands.settle();
        hands.picture(shell, "runs-teeth");
        beside.select(0);
        beside.notifyListeners(SWT.Selection, new Event());
    }

    private List<Table> teeth() {
        return hands.all(shell, Table.class, t -> t.isVisible() && t.getColumnCount() == 5
                && t.getColumn(4).getText().equals("Larger than chance"));
    }

    @Test
    void saysWhichStagesARunCannotTellApartAndAddsTheSettingsThatWould() {
        paste("Stage 1\tStage 2\tdirection\tposition\n0\t0\tup\t0\n5\t5\tup\t49.5\n10\t10\tup\t99\n15\t15\tup\t148.5\n");
        page("Pitches");
        hands.until("it is said", () -> says("cannot be told from each other, since they moved together"));
        hands.picture(shell, "runs-untold");
        assertFalse(hands.the(shell, Button.class, b -> b.getText().equals("&Accept")).isEnabled());
        push("Add &These Settings to the Run");
        page("Readings");
        hands.until("they are in the table to be read", () -> run().getReadings().size() > 4);
        assertTrue(run().getReadings().stream().skip(4).allMatch(reading -> reading.getValue() == null));
        hands.until("it is said", () -> says("still to be read."));
    }

    /** Five settings of each of two stages, once, from both sides: 20 rows; a column of numbers fills them. */
    @Test
    void plansARunAndFillsItFromAColumnOfNumbers() {
        new Modal(hands).during("Plan Measurements", () -> push("&Plan…"), dialog -> {
            hands.the(dialog, Spinner.class, s -> s.getMaximum() == 20).setSelection(1);
            hands.until("it is counted", () -> !hands.all(dialog, Text.class, t -> t.getText().startsWith("20 readings at"))
                    .isEmpty() || !hands.all(dialog, Label.class, l -> l.getText().startsWith("20 readings at")).isEmpty());
            hands.picture(dialog, "runs-plan");
            Button ok = dialog.getDefaultButton();
            ok.notifyListeners(SWT.Selection, new Event());
        });
        hands.until("it is planned", () -> session.axis().getRuns().size() == 1 && run().getReadings().size() == 20);
        hands.focus(readings());
        readings().setSelection(18);
        readings().notifyListeners(SWT.Selection, new Event());
        clip("1,5\n2,5\n");
        hands.chord(SWT.MOD1, 'v');
        hands.until("they are filled in", () -> "1.5 mm".equals(run().getReadings().get(18).getValue())
                && "2.5 mm".equals(run().getReadings().get(19).getValue()));
        hands.chord(SWT.MOD1, 'z');
        hands.until("they are taken back", () -> run().getReadings().get(18).getValue() == null);
    }

    @Test
    void importsAFileAndShowsHowTheCarriageRepeats() throws IOException {
        Path file = folder.resolve("run.csv");
        Files.writeString(file, "Stage 1,Stage 2,direction,position (mm)\n0,0,up,0.001\n0,0,up,-0.001\n0,0,down,0.004\n"
                + "0,0,down,0.002\n10,0,up,50.002\n10,0,up,50.000\n10,0,down,50.003\n10,0,down,50.001\n");
        FileChooser.open("Import Readings", file, () -> push("&Import…"));
        hands.until("they are listed", () -> readings().getItemCount() == 8);
        page("Repeats");
        // Means from below 0 and 1 µm, from above 3 and 2 µm: B = |−3| µm.
        hands.until("it is evaluated", () -> row("Figures of the axis", "Reversal, B").equals("Reversal, B|||3.00 µm"));
        // Every s is √2 µm: 4 s = 5.66 µm; with the reversal 2 · 2 · 1.414 + 3 = 8.66 µm.
        assertEquals("Repeatability, R|5.66 µm|5.66 µm|8.66 µm", row("Figures of the axis", "Repeatability, R"));
        assertTrue(says("comes back within a band of 8.66 µm; coming from below and from above differs by up to 3.00 µm."));
        hands.picture(shell, "runs-repeats");
    }

    /** 99.7 mm of 100 mm drawn: 0.30 % short, and 1 / 0.997 = 1.00301 to print it again. */
    @Test
    void tellsTheScaleOfAPrint() {
        page("Print Scale");
        push("New S&et-up");
        hands.until("it is begun", () -> setups().size() == 1);
        hands.focus(hands.the(shell, Button.class, b -> b.getText().equals("Add &Length")));
        push("Add &Length");
        hands.until("it is typed", () -> !cells(spans()).isEmpty() && cells(spans()).get(0).isFocusControl());
        Text drawn = cells(spans()).get(0);
        hands.stroke(SWT.TAB);
        hands.until("the measured one is typed", () -> cells(spans()).stream().anyMatch(cell -> cell != drawn
                && cell.isFocusControl()));
        hands.chord(SWT.MOD1, 'a');
        hands.type("99.7");
        hands.enter(0);
        hands.until("it is told", () -> says("prints 0.300 % too short, ±0.039 %. To reprint, scale the drawing in x by 1.00301."));
        hands.picture(shell, "runs-print");
        hands.chord(SWT.MOD1, 'z');
        hands.until("it is taken back", () -> "100 mm".equals(setups().get(0).getSpans().get(0).getMeasured()));
    }

    private List<PrintSetup> setups() {
        return session.positioner().getPrintSetups();
    }

    private MeasurementRun run() {
        return session.axis().getRuns().get(0);
    }

    private Stage stage(int number) {
        return session.axis().getStages().get(number);
    }

    private String values() {
        return session.axis().getRuns().isEmpty() ? "" : run().getReadings().stream().map(Reading::getValue)
                .collect(Collectors.joining(", "));
    }

    private void paste(String text) {
        clip(text);
        hands.focus(readings());
        hands.chord(SWT.MOD1, 'v');
        hands.until("it is pasted", () -> !session.axis().getRuns().isEmpty());
    }

    private void clip(String text) {
        Clipboard clipboard = new Clipboard(shell.getDisplay());
        clipboard.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
    }

    private Table readings() {
        return shown("F2, Enter or a double click");
    }

    private Table pitches() {
        return shown("With 95 % probability");
    }

    private Table spans() {
        return shown("From a flank to another");
    }

    private Table shown(String tip) {
        return hands.the(shell, Table.class, t -> String.valueOf(t.getToolTipText()).startsWith(tip)
                && (!tip.startsWith("F2") || t.getColumn(0).getText().equals("#")));
    }

    /** A row of a table by its name and first cell. */
    private String row(String name, String first) {
        Table table = hands.the(shell, Table.class, t -> Names.of(t).equals(name));
        return IntStream.range(0, table.getItemCount()).mapToObj(table::getItem).filter(i -> i.getText(0).equals(first))
                .map(MeasurementsTest::cells).findFirst().orElse("");
    }

    private static String cells(TableItem item) {
        return IntStream.range(0, item.getParent().getColumnCount()).mapToObj(item::getText).collect(Collectors.joining("|"));
    }

    private List<Text> cells(Table table) {
        return hands.all(table, Text.class, Text::isVisible);
    }

    private boolean says(String words) {
        return !hands.all(shell, Label.class, l -> l.isVisible() && l.getText().contains(words)).isEmpty();
    }

    private void push(String text) {
        hands.the(shell, Button.class, b -> b.getText().equals(text) && b.isEnabled()).notifyListeners(SWT.Selection, new Event());
        hands.settle();
    }

    private void page(String title) {
        hands.page(shell, PAGES, title);
    }
}
