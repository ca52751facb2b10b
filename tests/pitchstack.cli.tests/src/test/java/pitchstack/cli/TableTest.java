// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Lists planned on stages of 5 mm and 4.9 mm, where a release costs 4 s and a tooth 1 s. A is reached by 5.0 mm, one tooth
 * of the rack, for 5 s, or by 5.1 mm, two teeth forward and one back, for 4 + 2 + 4 + 1 = 11 s; B only by the latter.
 * From 5.0 to 5.1 mm it is one tooth of each, 10 s. So A and B cost 5 + 10 s one by one, but 11 + 0 s together, and from
 * the start 5 + 11 s.
 */
class TableTest {
    private static final String A_AND_B = "name;position;tolerance\nA;5,05;0,05\nB;5,1;0\n";
    private static final String FENCE = "../../bundles/pitchstack.help/examples/cross-cut-fence.pitchstack";

    @TempDir
    private Path folder;
    private String stack;
    private Path list;

    @BeforeEach
    void writeFiles() throws Exception {
        stack = StackTexts.write(folder, StackTexts.COMMON_PRACTICE);
        list = Files.writeString(folder.resolve("list.csv"), A_AND_B);
    }

    @ParameterizedTest
    @CsvSource({"given, 11, 4", "free, 11, 4", "one-by-one, 15,", "from-start, 16,"})
    void addsUpTheEffortOfEveryOrder(String order, int effort, Integer saved) throws Exception {
        JsonNode json = json("--targets", list.toString(), "--order", order);
        assertEquals(effort, json.get("effortSeconds").intValue());
        assertEquals(saved, json.get("savedSeconds").isNull() ? null : json.get("savedSeconds").intValue());
        assertEquals(2, json.get("reached").intValue());
    }

    @Test
    void tellsTheMovesInOrderAndTheSaving() {
        CommandRun run = table("--targets", list.toString());
        assertEquals(List.of(
                "Test bench, axis “Slide”: 2 stops in the given order",
                "Now at: 0.000 mm (Rack 0; Fine 0)",
                "1. A, 5.050 mm",
                "Reached: 5.100 mm, 0.050 mm above the target"), run.lines().subList(0, 4));
        List<String> last = run.lines().subList(run.lines().size() - 6, run.lines().size());
        assertEquals(List.of("2. B, 5.100 mm", "Reached: 5.100 mm, exactly on the target", "Nothing to move.",
                "Reached: 2 of 2", "Effort of all moves: 11 s", "One by one: 15 s, so that this saves 4 s"), last);
        assertEquals(0, run.code());
    }

    /** At 5.1 mm already, B costs nothing, and A nothing either. */
    @Test
    void startsWhereItIsTold() throws Exception {
        assertEquals(0, json("--targets", list.toString(), "--from", "2,-1").get("effortSeconds").intValue());
    }

    @Test
    void leavesOutWhatCannotBeReachedOrReadAndSaysWhy() throws Exception {
        Files.writeString(list, A_AND_B + "C;0,15;0\nD;ten;0\n");
        CommandRun run = table("--targets", list.toString());
        assertEquals(1, run.code());
        assertTrue(run.out().contains("3. C, 0.150 mm\n  Left out: 0.150 mm lies between 0.100 mm and 0.200 mm"), run.out());
        assertTrue(run.lines().contains("Reached: 2 of 3"), run.out());
        assertTrue(run.out().contains("Line 5: “ten” is not a length"), run.out());
        JsonNode json = json("--targets", list.toString());
        assertEquals(1, json.get("leftOut").intValue());
        assertTrue(json.get("stops").get(2).get("reason").textValue().startsWith("0.150 mm lies between"));
        assertTrue(json.get("stops").get(2).get("setting").isNull());
        assertEquals(1, json.get("unread").size());
    }

    @Test
    void writesThePlanAsATable() throws Exception {
        Path plan = folder.resolve("plan.csv");
        Files.writeString(list, A_AND_B + "C;0,15;0\n");
        table("--targets", list.toString(), "--out", plan.toString());
        List<String> lines = Files.readAllLines(plan);
        assertEquals("stop,name,target (mm),tolerance (mm),position (mm),error (mm),Rack index,Fine index,effort (s),worn,why not",
                lines.get(0));
        assertEquals("1,A,5.05,0.05,5.1,0.05,2,-1,11,,", lines.get(1));
        assertEquals("2,B,5.1,0,5.1,0,2,-1,0,,", lines.get(2));
        assertTrue(lines.get(3).startsWith("3,C,0.15,0,,,,,,,\"0.150 mm lies between"), lines.get(3));
        assertRefused("there is a file “" + plan + "” already", table("--targets", list.toString(), "--out", plan.toString()));
    }

    /** Of its 13 targets one lies beyond the travel and one between two steps. */
    @Test
    void plansTheTargetsOfTheFileItself() throws Exception {
        CommandRun run = CommandRun.of("table", FENCE, "--json");
        JsonNode json = new ObjectMapper().readTree(run.out());
        assertEquals(1, run.code());
        assertEquals(11, json.get("reached").intValue());
        assertEquals(2, json.get("leftOut").intValue());
    }

    @Test
    void refusesListsThatCannotBeUsed() throws Exception {
        assertRefused("Axis “Slide” has no targets in the file; save some in the window, or name a list with --targets.",
                table());
        assertRefused("--targets: there is no file “none.csv”.", table("--targets", "none.csv"));
        assertRefused("--order: “back” is not known; write given, free, one-by-one or from-start.",
                table("--targets", list.toString(), "--order", "back"));
        assertRefused("--out: “plan.svg” must end with .csv", table("--targets", list.toString(), "--out", "plan.svg"));
        Files.writeString(list, "name\nA\n");
        assertRefused("has no targets. Line 1: No column is called “position”", table("--targets", list.toString()));
        Files.write(list, "position\n1 µm".getBytes(StandardCharsets.ISO_8859_1));
        assertRefused("is not text in UTF-8", table("--targets", list.toString()));
        assertRefused("--targets: “" + folder + "” cannot be read", table("--targets", folder.toString()));
    }

    private static void assertRefused(String sentence, CommandRun run) {
        assertEquals(2, run.code(), run.out());
        assertEquals("", run.out());
        assertEquals(1, run.err().lines().count(), run.err());
        assertTrue(run.err().contains(sentence), run.err());
    }

    private JsonNode json(String... options) throws Exception {
        return new ObjectMapper().readTree(
                table(Stream.concat(Stream.of(options), Stream.of("--json")).toArray(String[]::new)).out());
    }

    private CommandRun table(String... options) {
        return CommandRun.of(Stream.concat(Stream.of("table", stack), Stream.of(options)).toArray(String[]::new));
    }
}
