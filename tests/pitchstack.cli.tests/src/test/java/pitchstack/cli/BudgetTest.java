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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BudgetTest {
    /**
     * A rack known to 10 ppm under a printed row known to 200 ppm, seats of 5 µm each (√40 flanks of 31.6 µm), teeth without
     * scatter, ±2 K: the machine of the hand example.
     */
    private static final String PLATE = "../../bundles/pitchstack.help/examples/slide-plate.pitchstack";
    private static final String MACHINE = StackTexts.positioner("mm", StackTexts.axis("Slide", "linear",
            row("Rack", "bought", "5 mm", 200, 0, "steel", 10) + row("Fine", "printed", "4.9 mm", 60, 10, "PLA", 200)));

    @TempDir
    private Path folder;

    private static String row(String name, String source, String pitch, int teeth, int start, String material, int ppm) {
        return "<stages name=\"" + name + "\" source=\"" + source + "\" pitch=\"" + pitch + "\" start=\"" + start
                + "\" minimumEngaged=\"20\" material=\"" + material + "\" scatter=\"0 mm\" seatScatter=\"0.0316227766 mm\">"
                + "<baseRow teeth=\"" + teeth + "\" scaleUncertaintyPpm=\"" + ppm + "\"/><riderRow teeth=\"20\"/></stages>\n";
    }

    private String machine() throws Exception {
        return Files.writeString(folder.resolve("machine.pitchstack"), MACHINE).toString();
    }

    /**
     * 742.3 mm = 122·5 + 27·4.9: 610 mm at 10 ppm, 132.3 mm at 200 ppm, two seats of 5 µm, and ±2 K alike of 610 mm steel and
     * 132.3 mm PLA as one temperature; of second order, coefficients known to 10 and 30 %.
     */
    @Test
    void addsUpTheMachineByHandFromItsFile() throws Exception {
        CommandRun run = CommandRun.of("budget", machine(), "--setting", "122,27", "--json");
        assertEquals(0, run.code(), run.err());
        JsonObject json = JsonParser.parseString(run.out()).getAsJsonObject();
        double kelvin = 2 / Math.sqrt(3);
        double warmth = (610e3 * 11.5e-6 + 132.3e3 * 68e-6) * kelvin;
        double second = Math.hypot(610e3 * 1.15e-6, 132.3e3 * 20.4e-6) * kelvin;
        double expected = Math.sqrt(6.10 * 6.10 + 26.46 * 26.46 + 25 + 25 + warmth * warmth + second * second);
        assertEquals(expected, json.get("combined").getAsDouble(), 0.001);
        assertEquals(1.959964 * expected, json.get("expanded").getAsDouble(), 0.002);
        assertEquals(Math.hypot(6.10, 26.46), json.get("repeating").getAsDouble(), 0.001);
        assertEquals("742.3", json.get("position").getAsString());
        assertTrue(json.get("degreesOfFreedom").isJsonNull(), "nothing was read, so that they are infinite");
        double shares = 0;
        for (JsonElement line : json.getAsJsonArray("contributions")) {
            shares += line.getAsJsonObject().get("share").getAsDouble();
            assertEquals("B", line.getAsJsonObject().get("type").getAsString());
        }
        assertEquals(1, shares, 1e-12);
    }

    @Test
    void tellsAPersonTheSame() throws Exception {
        CommandRun run = CommandRun.of("budget", machine(), "--setting", "122,27", "--assumptions");
        assertTrue(run.lines().contains("Position: 742.300 mm (Rack 122; Fine 27), the setting given"), run.out());
        assertTrue(run.out().contains("u = 33.8 µm: 27.2 µm repeats and can be measured and corrected, 20.1 µm varies each time."),
                run.out());
        assertTrue(run.out().contains("U = 66.2 µm holds it with 95 % (k = 1.96, ∞ effective degrees of freedom)."), run.out());
        assertTrue(run.out().contains("200.0 ppm × 132.300 mm") && run.out().contains("Usual numbers of PLA, not measured"),
                run.out());
    }

    @Test
    void findsTheWorstWhereTheWayIsLongest() throws Exception {
        JsonObject json = JsonParser.parseString(CommandRun.of("budget", machine(), "--worst", "--json").out()).getAsJsonObject();
        // Rows that always bear whole: 180 rack pitches and 30 printed ones; everything grows with the way.
        assertEquals("[180,30]", json.getAsJsonArray("setting").toString());
        assertEquals("the worst of all settings", json.get("chosen").getAsString());
    }

    @Test
    void takesThePositionThatCanBeReached() throws Exception {
        String file = machine();
        assertTrue(CommandRun.of("budget", file, "--at", "742.3mm").out().contains("Position: 742.300 mm (Rack 122; Fine 27)"));
        CommandRun out = CommandRun.of("budget", file, "--at", "0.05mm");
        assertEquals(2, out.code());
        assertTrue(out.err().startsWith("pitchstack: --at: 0.050 mm is not reached within 0.000 mm; the nearest positions are 0.000 mm"
                + " and 0.100 mm."), out.err());
    }

    /** The two rows of a fine pair are of one print; the rack and a row alone share nothing with anything. */
    @Test
    void saysWhereSharesCountWhatRowsHaveInCommon() throws Exception {
        String common = "their shares count what they have in common";
        assertTrue(CommandRun.of("budget", PLATE, "--worst").out().contains(common));
        assertFalse(CommandRun.of("budget", machine(), "--setting", "122,27").out().contains(common));
    }

    @Test
    void refusesWhatItCannotAnswer() throws Exception {
        String file = machine();
        assertRefused("Only one of --at, --setting and --worst can be given.", file, "--worst", "--at", "1");
        assertRefused("--setting: “1” has 1 index, but axis “Slide” has 2 stages, lowest first: “Rack”, “Fine”.", file,
                "--setting", "1");
        String bad = Files.writeString(folder.resolve("bad.pitchstack"), MACHINE.replace("scatter=\"0 mm\"", "scatter=\"some\""))
                .toString();
        CommandRun run = CommandRun.of("budget", bad);
        assertEquals(2, run.code());
        assertTrue(run.err().startsWith("pitchstack: “Rack”, base row: the scatter of teeth cannot be read: “some” is not a length"),
                run.err());
        CommandRun check = CommandRun.of("check", bad);
        assertEquals(1, check.code());
        assertTrue(check.out().contains("the scatter of teeth cannot be read: “some” is not a length"), check.out());
    }

    private static void assertRefused(String sentence, String... arguments) {
        String[] all = new String[arguments.length + 1];
        all[0] = "budget";
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        CommandRun run = CommandRun.of(all);
        assertEquals(2, run.code());
        assertEquals("pitchstack: " + sentence + "\n", run.err());
    }
}
