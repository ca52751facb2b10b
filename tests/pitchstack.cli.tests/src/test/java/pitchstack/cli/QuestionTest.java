// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What one question may ask otherwise than the file says: relative moves, the approach rule, the temperature, worn teeth. */
class QuestionTest {
    @TempDir
    private Path folder;

    /** From (3, −2), at 15 − 9.8 = 5.2 mm, or from (0, 0). */
    @ParameterizedTest
    @CsvSource({"'3,-2', 0.1mm, 5.3", "'3,-2', -100um, 5.1", "'3,-2', 0, 5.2", "'0,0', 0.3, 0.3", "'0,0', -0.3, -0.3"})
    void movesByADistanceFromWhereTheStagesStand(String from, String by, String position) throws Exception {
        JsonNode json = json(StackTexts.COMMON_PRACTICE, "plan", "--by", by, "--from", from, "--json");
        assertEquals(position, json.get("position").textValue());
    }

    @Test
    void saysFromWhereTheDistanceCounts() throws Exception {
        assertTrue(run(StackTexts.COMMON_PRACTICE, "plan", "--by", "-0.1").lines()
                .contains("Target: −0.100 mm, 0.100 mm below where it stands, tolerance 0.000 mm"));
        assertTrue(run(StackTexts.COMMON_PRACTICE, "plan", "--by", "0.1").lines()
                .contains("Target: 0.100 mm, 0.100 mm above where it stands, tolerance 0.000 mm"));
        assertTrue(run(StackTexts.COMMON_PRACTICE, "plan", "--by", "0").lines()
                .contains("Target: 0.000 mm, where the carriage stands, tolerance 0.000 mm"));
    }

    /** One ring tooth back from 0 is 359°. */
    @Test
    void movesRoundZeroOnARotaryAxis() throws Exception {
        JsonNode json = json(StackTexts.ROTARY, "plan", "--by", "-1", "--json");
        assertEquals("359", json.get("position").textValue());
    }

    /** Forward 1 costs 4 + 1 s; back 1 goes back 2 and forward 1: 4 + 3 s. In either direction it is 5 s each. */
    @Test
    void takesAnotherApproachRuleThanThatOfTheFile() throws Exception {
        assertEquals("[\"direct\",\"further\",\"return\"]", kinds(json(StackTexts.COMMON_PRACTICE, "plan", "--at", "0.1",
                "--approach", "forward", "--json")));
        String forward = StackTexts.COMMON_PRACTICE.replace("<axes ", "<axes approach=\"forward\" ");
        JsonNode either = json(forward, "plan", "--at", "0.1", "--approach", "either", "--json");
        assertEquals("[\"direct\",\"direct\"]", kinds(either));
        assertEquals(10, either.get("effortSeconds").intValue());
        assertEquals("[\"further\",\"return\",\"direct\"]",
                kinds(json(forward, "plan", "--at", "0.1", "--approach", "BACK", "--json")));
    }

    private static String kinds(JsonNode plan) {
        List<String> kinds = new ArrayList<>();
        plan.get("steps").forEach(step -> kinds.add('"' + step.get("kind").textValue() + '"'));
        return "[" + String.join(",", kinds) + "]";
    }

    /** Three teeth of either stage alone are more than the 5 mm that the carriage may stand off: they take turns. */
    @Test
    void tellsStepsThatGoAPartOfTheWay() throws Exception {
        String limited = StackTexts.COMMON_PRACTICE.replace("</axes>",
                "<shiftLimits lowest=\"1\" highest=\"2\" limit=\"5 mm\"/></axes>");
        JsonNode json = json(limited, "plan", "--at", "0.3", "--json");
        assertTrue(kinds(json).contains("\"partway\""), json.toString());
    }

    /** A list too: forward to 0.1 mm, so the fine stage goes one tooth further; 5 + 7 s. */
    @Test
    void plansListsByTheSameRule() throws Exception {
        Path list = Files.writeString(folder.resolve("list.csv"), "position\n0.1\n");
        JsonNode json = json(StackTexts.COMMON_PRACTICE, "table", "--targets", list.toString(), "--approach", "forward",
                "--order", "free", "--json");
        assertEquals(12, json.get("effortSeconds").intValue());
        assertEquals("[\"direct\",\"further\",\"return\"]", kinds(json.get("stops").get(0)));
    }

    /** (1, −1) stands on the worn tooth 5 of the rack, and is the only setting for 0.1 mm. */
    @ParameterizedTest
    @CsvSource({"avoid, 1", "allow, 1", "never, 0"})
    void offersWornTeethInListsAsAsked(String worn, int reached) throws Exception {
        Path list = Files.writeString(folder.resolve("list.csv"), "position\n0.1\n");
        JsonNode json = json(StackTexts.WORN, "table", "--targets", list.toString(), "--worn", worn, "--json");
        assertEquals(reached, json.get("reached").intValue());
    }

    /** 20 teeth of 5 mm at 20 ppm/K and 30 °C, or 86 °F, are 100 mm × 1.0002 = 100.02 mm; the file says 20 °C. */
    @ParameterizedTest
    @CsvSource({"30", "30C", "86F", "30.0 °C"})
    void asksForAnotherTemperature(String temperature) throws Exception {
        String steel = StackTexts.positioner("mm", StackTexts.axis("Slide", "linear",
                StackTexts.RACK.replace("pitch=", "expansionPpmPerK=\"20\" pitch=")));
        JsonNode plan = json(steel, "plan", "--at", "100", "--tolerance", "0.02", "--temperature", temperature, "--json");
        assertEquals("100.02", plan.get("position").textValue());
        // 90 teeth are 450.09 mm, and −10 are −50.01 mm.
        JsonNode coverage = json(steel, "coverage", "--temperature", temperature, "--json");
        assertEquals("450.09", coverage.get("travel").get("to").textValue());
        assertTrue(run(steel, "plan", "--at", "100", "--temperature", temperature).out()
                .startsWith("Test bench at 30 °C, axis “Slide”\n"));
        Path list = Files.writeString(folder.resolve("list.csv"), "position\n100.02\n");
        assertEquals(0, run(steel, "table", "--targets", list.toString(), "--temperature", temperature).code());
        assertEquals(1, run(steel, "table", "--targets", list.toString()).code());
    }

    @Test
    void refusesMoreMemoryThanThereIs() throws Exception {
        Path list = Files.writeString(folder.resolve("list.csv"), "position\n0.1\n");
        for (String memory : List.of("0", "-1", "much", "9999999")) {
            CommandRun run = run(StackTexts.COMMON_PRACTICE, "table", "--targets", list.toString(), "--memory", memory);
            assertEquals(2, run.code());
            assertTrue(run.err().contains("--memory: “" + memory + "” is not a whole number of megabytes from 1 to "), run.err());
        }
        assertEquals(0, run(StackTexts.COMMON_PRACTICE, "table", "--targets", list.toString(), "--memory", "16").code());
    }

    private JsonNode json(String stack, String command, String... options) throws Exception {
        return new ObjectMapper().readTree(run(stack, command, options).out());
    }

    private CommandRun run(String stack, String command, String... options) throws Exception {
        List<String> arguments = new ArrayList<>(List.of(command, StackTexts.write(folder, stack)));
        arguments.addAll(List.of(options));
        return CommandRun.of(arguments.toArray(String[]::new));
    }
}
