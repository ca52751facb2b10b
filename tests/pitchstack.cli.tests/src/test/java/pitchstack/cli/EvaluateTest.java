// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * ISO 230-2 on the command line, on a public run of readings: a motion test report for a slits axis of 2021, positions in mm,
 * found by its numbers; its report prints A 18.58 and A↓ 16.55 µm. The figures below are computed from the definitions apart
 * from this program; the report's own R and E are not those of the standard.
 */
class EvaluateTest {
    private static final double[] TARGETS = {15.0, 25.2, 35.4, 45.6, 55.8};
    private static final double[][] UP = {{15.00335, 15.00233, 15.00172, 15.00213, 15.00172},
        {25.19974, 25.20015, 25.20096, 25.20056, 25.20056}, {35.40102, 35.3996, 35.40225, 35.40306, 35.40449},
        {45.59151, 45.5909, 45.59212, 45.5909, 45.58947}, {55.80583, 55.80624, 55.80685, 55.80562, 55.80562}};
    private static final double[][] DOWN = {{15.00518, 15.00518, 15.00416, 15.00335, 15.00314},
        {25.19628, 25.19607, 25.19567, 25.19587, 25.19526}, {35.39817, 35.39837, 35.3998, 35.39939, 35.4},
        {45.59232, 45.59191, 45.59293, 45.59191, 45.59151}, {55.80705, 55.80725, 55.80705, 55.80705, 55.80644}};

    @TempDir
    private Path folder;
    private String visits;

    @BeforeEach
    void writeVisits() throws Exception {
        StringBuilder table = new StringBuilder("target,position,direction\n");
        for (int run = 0; run < UP[0].length; run++) {
            for (int i = 0; i < TARGETS.length; i++) {
                table.append(TARGETS[i]).append(',').append(UP[i][run]).append(",up\n");
                table.append(TARGETS[i]).append(',').append(DOWN[i][run]).append(",down\n");
            }
        }
        visits = write("visits.csv", table.toString());
    }

    private String write(String name, String text) throws Exception {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private static void assertFigures(JsonObject figures, String names, double... expected) {
        String[] name = names.split(",");
        for (int i = 0; i < name.length; i++) {
            assertEquals(expected[i], figures.get(name[i]).getAsDouble(), 6e-4, name[i]);
        }
    }

    @Test
    void givesTheFiguresOfThePublicRun() {
        CommandRun run = CommandRun.of("evaluate", "--readings", visits, "--json");
        assertEquals(0, run.code(), run.err());
        JsonObject json = JsonParser.parseString(run.out()).getAsJsonObject();
        assertEquals("um", json.get("unit").getAsString());
        assertFigures(json.getAsJsonObject("both"), "B,meanB,R,E,M,A", 4.564, 0.6956, 8.3539, 15.988, 14.952, 18.5713);
        assertFigures(json.getAsJsonObject("up"), "R,E,A", 7.5024, 15.052, 18.0654);
        assertFigures(json.getAsJsonObject("down"), "R,E,A", 3.8825, 14.852, 16.5425);
        assertFigures(json.getAsJsonArray("targets").get(3).getAsJsonObject(),
                "meanUp,meanDown,deviationUp,deviationDown,reversal", -9.020, -7.884, 0.98405, 0.53766, -1.136);
    }

    @Test
    void tellsThemToAPerson() {
        CommandRun run = CommandRun.of("evaluate", "--readings", visits);
        assertTrue(run.lines().contains("Repeatability R     7.50 µm  3.88 µm  8.35 µm"), run.out());
        assertTrue(run.lines().contains("Accuracy A          18.1 µm  16.5 µm  18.6 µm"), run.out());
        assertTrue(run.out().contains("45.600 mm  −9.02 µm  0.98 µm  −7.88 µm  0.54 µm  −1.14 µm"), run.out());
    }

    @Test
    void saysWhatIsMissingWhereThereAreTooFewVisits() throws Exception {
        CommandRun run = CommandRun.of("evaluate", "--readings", write("one.csv", "target,position,direction\n1,1.001,up\n"));
        assertEquals(1, run.code());
        assertTrue(run.out().contains("No position was visited twice from the same side, so that ISO 230-2 says nothing. Visit each 5"
                + " times from either side."), run.out());
    }

    @Test
    void asksForDirectionsAndUnits() throws Exception {
        String silent = write("silent.csv", "target,position\n1,1.001\n1,1.002\n");
        assertRefused("--readings: 2 rows have no direction; write up or down in a column direction.", "--readings", silent);
        assertRefused("--unit: “furlong” is not a unit here; write mm, in or deg.", "--readings", visits, "--unit", "furlong");
        assertRefused("Readings are missing; write --readings with a .csv file.");
        assertRefused("--readings: there is no file “" + folder.resolve("none") + "”.", "--readings",
                folder.resolve("none").toString());
    }

    private static void assertRefused(String sentence, String... arguments) {
        String[] all = new String[arguments.length + 1];
        all[0] = "evaluate";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        CommandRun run = CommandRun.of(all);
        assertEquals(2, run.code());
        assertEquals("", run.out());
        assertEquals("pitchstack: " + sentence + "\n", run.err());
    }

    @Test
    void evaluatesARunOfAFileFromWhereItsPitchesSay() {
        CommandRun run = CommandRun.of("evaluate", "../../bundles/pitchstack.help/examples/slide-plate.pitchstack", "--run",
                "2026-01-20");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("Coming back to "), run.out());
        assertTrue(run.out().contains("Some position was visited 2 times from a side; ISO 230-2 asks for 5."), run.out());
    }
}
