// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a stack reaches, with figures counted by hand. */
class CoverageTest {
    /**
     * 5 a + 4.9 b mm with a in {0, 1} and b in {−1, 0, 1}: −4.9, 0, 0.1, 4.9, 5 and 9.9 mm, those with a = 1, which are
     * 0.1, 5 and 9.9 mm, over a worn tooth.
     */
    static final String SIX_POSITIONS = StackTexts.positioner("mm", StackTexts.axis("Slide", "linear",
            row("Rack", "5 mm", 0, 2, "<worn first=\"1\" last=\"1\"/>") + row("Fine", "4.9 mm", 1, 3, "")));
    private static final String FENCE = "../../bundles/pitchstack.help/examples/cross-cut-fence.pitchstack";

    @TempDir
    private Path folder;

    /** Stages on which a single tooth is engaged: indices from −start to teeth − 1 − start. */
    private static String row(String name, String pitch, int start, int teeth, String worn) {
        return StackTexts.stage(name, pitch, start, teeth, worn).replace("minimumEngaged=\"10\"", "minimumEngaged=\"1\"")
                .replace("riderRow teeth=\"20\"", "riderRow teeth=\"1\"");
    }

    /**
     * Of the travel of 14.8 mm, 0.05 + 0.1 + 0.1 mm lie within 0.05 mm of a clean position, as much near worn ones only;
     * 0.25 / 14.8 = 1.69 %. The widest spacing is 4.9 mm, so that half of it leaves no gap; but the upper end of the
     * travel is 5 mm from the nearest clean position.
     */
    @Test
    void tellsSharesGapsAndTheFinestStep() throws Exception {
        CommandRun run = coverage("--tolerance", "0.05mm");
        assertEquals(List.of(
                "Test bench, axis “Slide”, tolerance 0.050 mm",
                "Travel: −4.900 mm to 9.900 mm",
                "Clean: 1.69 % of the travel",
                "Worn only: 1.69 % of the travel",
                "Not reached: 96.62 % of the travel",
                "Gaps: 3, the largest 4.800 mm long, from −4.850 mm to −0.050 mm",
                "Finest step everywhere: 4.900 mm",
                "Tolerance that leaves no gap: 5.000 mm over clean teeth, 2.450 mm over worn ones too"), run.lines());
        assertEquals(1, run.code());
        assertEquals("", run.err());
    }

    /** Within 0.1 mm of 5 mm lie 4.9 mm, on clean teeth, and 5 mm, over the worn tooth. */
    @Test
    void countsTheSettingsThatReachAPosition() throws Exception {
        CommandRun run = coverage("--at", "5", "--tolerance", "0.1mm");
        assertEquals("Settings that reach 5.000 mm: 1 over clean teeth, 1 over worn ones",
                run.lines().get(run.lines().size() - 1));
        JsonNode settings = new ObjectMapper().readTree(coverage("--at", "5", "--tolerance", "0.1mm", "--json").out())
                .get("settings");
        assertEquals("5", settings.get("position").asText());
        assertEquals(1, settings.get("clean").asInt());
        assertEquals(1, settings.get("worn").asInt());
        assertTrue(new ObjectMapper().readTree(coverage("--json").out()).get("settings").isNull());
        assertTrue(coverage("--at", "5 furlongs").err().contains("--at: “furlongs” is not a unit of length"));
    }

    /** There are 149 multiples of 0.1 mm from −4.9 to 9.9 mm, and all six positions are among them. */
    @Test
    void countsMultiplesOfTheStepAndListsTheFirstTenMissed() throws Exception {
        List<String> lines = coverage("--step", "0.1mm").lines();
        assertEquals(List.of("Multiples of 0.100 mm: 149 inside the travel", "clean: 3", "worn only: 3", "not reached: 143",
                "First 10 missed: −4.800 mm, −4.700 mm, −4.600 mm, −4.500 mm, −4.400 mm, −4.300 mm, −4.200 mm, −4.100 mm,"
                + " −4.000 mm, −3.900 mm"), lines.subList(lines.size() - 5, lines.size()));
    }

    /** 25 a + 24 b with |b| ≤ 12 gives every multiple of 0.01 in just once; 25 values of a lie over the worn teeth. */
    @Test
    void findsEveryHundredthOfAnInchOnTheFence() throws Exception {
        CommandRun run = CommandRun.of("coverage", FENCE, "--step", "0.010in", "--tolerance", "0", "--json");
        JsonNode multiples = new ObjectMapper().readTree(run.out()).get("multiples");
        assertEquals("0.254", multiples.get("step").textValue());
        assertEquals(9601, multiples.get("count").intValue());
        assertEquals(25 * 25, multiples.get("wornOnly").intValue());
        assertEquals(9601 - 25 * 25, multiples.get("clean").intValue());
        assertEquals(0, multiples.get("notReached").intValue());
        assertEquals(0, multiples.get("firstMissed").size());
        assertEquals(0, run.code());
    }

    /** Of each 0.010 in from one position to the next, 0.004 in on either side is reached; 0.002 in is 0.0508 mm. */
    @Test
    void tellsTheSameInJson() throws Exception {
        CommandRun run = CommandRun.of("coverage", FENCE, "--tolerance", "0.004in", "--json");
        JsonNode json = new ObjectMapper().readTree(run.out());
        assertEquals(1, run.code());
        assertEquals(false, json.get("allReached").booleanValue());
        assertEquals("mm", json.get("unit").textValue());
        assertEquals("0.1016", json.get("tolerance").textValue());
        assertEquals("0", json.get("travel").get("from").textValue());
        assertEquals("2438.4", json.get("travel").get("to").textValue());
        assertEquals(0.2, json.get("notReached").doubleValue(), 1e-9);
        assertEquals(0.8, json.get("clean").doubleValue() + json.get("wornOnly").doubleValue(), 1e-9);
        assertEquals(9600, json.get("gaps").intValue());
        assertEquals("0.101600000001", json.get("largestGap").get("from").textValue());
        assertEquals("0.152399999999", json.get("largestGap").get("to").textValue());
        assertEquals("0.254", json.get("finestStep").textValue());
        assertEquals("0.127", json.get("gaplessTolerance").textValue());
        assertTrue(json.get("multiples").isNull());
    }

    /** Half the step: every position lies within 0.005 in of one that can be set. */
    @Test
    void endsWellWhereEverythingIsReached() throws Exception {
        CommandRun run = CommandRun.of("coverage", FENCE, "--tolerance", "0.005in");
        assertEquals(0, run.code());
        assertTrue(run.lines().contains("Gaps: none"), run.out());
    }

    private CommandRun coverage(String... options) throws Exception {
        String file = StackTexts.write(folder, SIX_POSITIONS);
        return CommandRun.of(Stream.concat(Stream.of("coverage", file), Stream.of(options)).toArray(String[]::new));
    }
}
