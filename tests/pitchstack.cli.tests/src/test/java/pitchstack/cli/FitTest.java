// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFile;

/** A made-up device of truth +80 ppm (rack) and −500 ppm (fine row), read with 1 µm of scatter. */
class FitTest {
    private static final double RACK_PPM = 80;
    private static final double FINE_PPM = -500;

    @TempDir
    private Path folder;
    private Path file;
    private String readings;

    @BeforeEach
    void write() throws Exception {
        file = Files.writeString(folder.resolve("bench.pitchstack"), StackTexts.COMMON_PRACTICE);
        readings = Files.writeString(folder.resolve("run.csv"), table(new int[][] {{0, 0}, {30, 0}, {60, 0}, {90, 0}, {0, -20},
            {0, -10}, {0, 10}, {0, 20}})).toString();
    }

    private static String table(int[][] settings) {
        Random random = new Random(20260115);
        StringBuilder table = new StringBuilder("Rack,Fine,direction,position\n");
        for (int[] at : settings) {
            for (int i = 0; i < 4; i++) {
                double mm = at[0] * 5 * (1 + RACK_PPM * 1e-6) + at[1] * 4.9 * (1 + FINE_PPM * 1e-6) + 1e-3 * random.nextGaussian();
                table.append(String.format(Locale.ROOT, "%d,%d,%s,%.4f%n", at[0], at[1], i % 2 == 0 ? "up" : "down", mm));
            }
        }
        return table.toString();
    }

    private CommandRun fit(String... more) {
        String[] all = new String[more.length + 2];
        all[0] = "fit";
        all[1] = file.toString();
        System.arraycopy(more, 0, all, 2, more.length);
        return CommandRun.of(all);
    }

    private static void assertNear(double truth, JsonElement stage) {
        JsonObject fitted = stage.getAsJsonObject();
        assertEquals(truth, fitted.get("correctionPpm").getAsDouble(), 4 * fitted.get("uncertaintyPpm").getAsDouble());
        assertTrue(fitted.get("withinPpm").getAsDouble() > fitted.get("uncertaintyPpm").getAsDouble());
    }

    @Test
    void findsTheTruthAndLeavesTheFileAsItIs() throws Exception {
        CommandRun run = fit("--readings", readings, "--json");
        assertEquals(0, run.code(), run.err());
        JsonObject json = JsonParser.parseString(run.out()).getAsJsonObject();
        assertNear(RACK_PPM, json.getAsJsonArray("stages").get(0));
        assertNear(FINE_PPM, json.getAsJsonArray("stages").get(1));
        assertEquals(32, json.getAsJsonArray("residuals").size());
        assertFalse(json.get("written").getAsBoolean());
        assertEquals(StackTexts.COMMON_PRACTICE, Files.readString(file));
    }

    @Test
    void writesReadingsAndCorrectionsAndKeepsTheFileBefore() throws Exception {
        CommandRun run = fit("--readings", readings, "--uncertainty", "1um", "--instrument-scale", "2", "--run-temperature",
                "21", "--apply");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("Written into the file: run “run” and the corrections above. The file before is kept as "
                + file + ".bak~."), run.out());
        assertEquals(StackTexts.COMMON_PRACTICE, Files.readString(Path.of(file + ".bak~")));
        Positioner positioner = StackFile.load(file).positioner();
        assertEquals(32, positioner.getAxes().get(0).getRuns().get(0).getReadings().size());
        assertEquals(20, positioner.getTemperatureC(), "the temperature of the readings is not that of the device");
        assertEquals(21, positioner.getAxes().get(0).getRuns().get(0).getTemperatureC());
        assertEquals("run", positioner.getAxes().get(0).getStages().get(0).getCorrectionRun().getId());
        assertEquals(FINE_PPM, positioner.getAxes().get(0).getStages().get(1).getCorrectionPpm(),
                4 * positioner.getAxes().get(0).getStages().get(1).getCorrectionUncertaintyPpm());
        String budget = CommandRun.of("budget", file.toString(), "--setting", "60,5").out();
        assertTrue(budget.contains("Fitted pitch of “Rack”") && budget.contains("Student’s t"), budget);
        assertTrue(fit("--readings", readings, "--apply").out().contains("run “run 2”"));
        assertEquals(0, fit("--run", "run").code());
    }

    @Test
    void proposesSettingsWhereStagesMovedTogether() throws Exception {
        String poor = Files.writeString(folder.resolve("poor.csv"), table(new int[][] {{0, 0}, {5, -5}, {10, -10}})).toString();
        Path plan = folder.resolve("plan.csv");
        CommandRun run = fit("--readings", poor, "--apply", "--plan", plan.toString(), "--runs", "2");
        assertEquals(1, run.code());
        assertTrue(run.out().contains("“Rack” and “Fine” cannot be told from each other, since they moved together. Measure also:"),
                run.out());
        assertTrue(Files.readString(plan).contains("up") && Files.readString(plan).contains("down"));
        assertEquals(StackTexts.COMMON_PRACTICE, Files.readString(file), "nothing is written without a fit");
    }

    @Test
    void plansWhatToReadWithoutReadings() throws Exception {
        Path plan = folder.resolve("plan.html");
        CommandRun run = fit("--plan", plan.toString(), "--points", "3", "--runs", "1");
        assertEquals("Written: “" + plan + "”, 12 readings to take.\n", run.out());
        assertTrue(Files.readString(plan).contains("Measuring plan: Test bench, axis “Slide”"));
        assertRefused("--plan: there is a file “" + plan + "” already; give another name, or replace it with --force.", "--plan",
                plan.toString());
        assertRefused("--points: “1” is not a whole number from 2 to 100.", "--plan", folder.resolve("b.csv").toString(),
                "--points", "1");
    }

    @Test
    void refusesWhatItCannotUse() throws Exception {
        String bad = Files.writeString(folder.resolve("bad.csv"), "Rack,Fine,position\n1,0,5\n1,x,5\n2,0,ten\n").toString();
        assertRefused("--readings: “" + bad + "” cannot be used. Line 3: The index of “Fine” is “x”; it must be a whole number."
                + " Line 4: “ten” is not a length; write it like 37.625 in, 37 5/8 in, 742.3 mm or 20 µm.", "--readings", bad);
        String empty = Files.writeString(folder.resolve("empty.csv"), "").toString();
        assertRefused("--readings: “" + empty + "” has no readings.", "--readings", empty);
        assertRefused("Readings are missing; write --readings with a .csv file, or --run with one of the file: none.");
        assertRefused("--run: axis “Slide” has no run “x”; it has none.", "--run", "x");
        assertRefused("--readings and --run cannot both be given.", "--run", "x", "--readings", readings);
        assertRefused("--instrument-scale: “two” is not a number of ppm from 0 to a million.", "--readings", readings,
                "--instrument-scale", "two");
        assertRefused("--uncertainty: “0” must be above 0.", "--readings", readings, "--uncertainty", "0");
        assertRefused("“Test bench” has no print set-up with a measured span; measure one, from a flank to another of the same hand,"
                + " and enter it in the file.", "--spans");
    }

    /** A temperature that is supposed for one question must never get into the file. */
    @Test
    void takesNoTemperatureThatIsOnlySupposed() throws Exception {
        CommandRun run = fit("--readings", readings, "--apply", "--temperature", "28");
        assertEquals(2, run.code());
        assertTrue(run.err().startsWith("pitchstack: There is no option --temperature"), run.err());
        assertEquals(StackTexts.COMMON_PRACTICE, Files.readString(file));
    }

    private void assertRefused(String sentence, String... more) {
        CommandRun run = fit(more);
        assertEquals(2, run.code(), run.out());
        assertEquals("", run.out());
        assertEquals("pitchstack: " + sentence + "\n", run.err());
    }

    /** 155 mm came out at 155.05 and 75 at 75.02 mm: (0.05 − 0.02)/80 = 375 ppm. */
    @Test
    void tellsTheScaleOfPrintsFromSpans() {
        CommandRun run = CommandRun.of("fit", "../../bundles/pitchstack.help/examples/slide-plate.pitchstack", "--spans", "--json");
        JsonObject tenths = JsonParser.parseString(run.out()).getAsJsonObject().getAsJsonArray("printSetups").get(2)
                .getAsJsonObject();
        assertEquals("tenths", tenths.get("name").getAsString());
        assertEquals(375, tenths.get("scalePpm").getAsDouble(), 1e-6);
        assertEquals(1 / 1.000375, tenths.get("factor").getAsDouble(), 1e-12);
    }

    /** The plate of the example is made up with −42, +385, +371, −148 and −166 ppm; its run must find it so. */
    @Test
    void theRunOfTheExampleTellsTheTruthOfItsPlate() {
        double[] truth = {-42, 385, 371, -148, -166};
        CommandRun run = CommandRun.of("fit", "../../bundles/pitchstack.help/examples/slide-plate.pitchstack", "--run",
                "2026-01-20", "--json");
        JsonObject json = JsonParser.parseString(run.out()).getAsJsonObject();
        for (int j = 0; j < truth.length; j++) {
            assertNear(truth[j], json.getAsJsonArray("stages").get(j));
        }
    }
}
