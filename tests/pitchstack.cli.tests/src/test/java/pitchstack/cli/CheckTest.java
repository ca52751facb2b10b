// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckTest {
    private static final ObjectMapper READER = new ObjectMapper();
    private static final String UNREADABLE = StackTexts.TWO_AXES.replace("4.9 mm", "4.9 “furlongs”");
    @TempDir
    private Path folder;

    @Test
    void findsNothingInASoundStack() throws Exception {
        CommandRun run = CommandRun.of("check", StackTexts.write(folder, StackTexts.COMMON_PRACTICE));
        assertEquals(new CommandRun(0, "Test bench: nothing found.\n", ""), run);
        CommandRun json = CommandRun.of("check", StackTexts.write(folder, StackTexts.COMMON_PRACTICE), "--json");
        assertEquals(new CommandRun(0, "[]\n", ""), json);
    }

    @Test
    void tellsWhatIsWrongAndWhere() throws Exception {
        CommandRun run = CommandRun.of("check", StackTexts.write(folder, UNREADABLE));
        assertEquals(1, run.code());
        assertEquals("", run.err());
        List<String> lines = run.lines();
        assertEquals("Test bench: 1 error.", lines.get(0));
        assertEquals("Error, axis “X”, stage “Fine”:", lines.get(1));
        assertTrue(lines.get(2).startsWith("The pitch cannot be read: "), lines.get(2));
        assertEquals(3, lines.size());
    }

    @Test
    void givesEveryMemberOfAFindingInJson() throws Exception {
        CommandRun run = CommandRun.of("check", StackTexts.write(folder, UNREADABLE), "--json");
        assertEquals(1, run.code());
        assertTrue(run.out().chars().allMatch(c -> c < 127), run.out());
        JsonNode findings = READER.readTree(run.out());
        assertEquals(1, findings.size());
        JsonNode finding = findings.get(0);
        TreeSet<String> names = new TreeSet<>();
        finding.fieldNames().forEachRemaining(names::add);
        assertEquals(new TreeSet<>(List.of("id", "severity", "axis", "place", "value", "limit", "sentence")), names);
        assertEquals("unreadable-pitch", finding.get("id").textValue());
        assertEquals("error", finding.get("severity").textValue());
        assertEquals("X", finding.get("axis").textValue());
        assertEquals("stage “Fine”", finding.get("place").textValue());
        assertEquals("4.9 “furlongs”", finding.get("value").textValue());
    }

    @Test
    void countsAWarningAndNotANoteForTheExitCode() throws Exception {
        CommandRun warned = CommandRun.of("check", StackTexts.write(folder, StackTexts.WARNED));
        assertEquals(1, warned.code());
        assertEquals(List.of("Test bench: 1 warning.", "Warning, axis “Slide”, stage “Fine”:"), warned.lines().subList(0, 2));
        CommandRun noted = CommandRun.of("check", StackTexts.write(folder, StackTexts.NOTED));
        assertEquals(0, noted.code());
        assertEquals(List.of("Test bench: 1 note.", "Note, axis “Slide”:"), noted.lines().subList(0, 2));
    }

    @Test
    void sumsUpAndPutsTheWorstFirst() throws Exception {
        String all = StackTexts.withStops(StackTexts.WARNED).replace("title=", "lineWidth=\"2 mm\" title=");
        List<String> lines = CommandRun.of("check", StackTexts.write(folder, all)).lines();
        // With lines of 2 mm both the tip and the root gap of the printed 5 mm teeth are too small.
        assertEquals("Test bench: 3 warnings, 1 note.", lines.get(0));
        assertEquals(List.of("Warning", "Warning", "Warning", "Note"), lines.stream().filter(line -> line.endsWith(":"))
                .map(line -> line.split(",")[0]).toList());
    }

    @Test
    void planTellsOfWarningsInOneLineAndGoesOn() throws Exception {
        String file = StackTexts.write(folder, StackTexts.WARNED);
        CommandRun run = CommandRun.of("plan", file, "--at", "10");
        assertEquals(0, run.code());
        assertEquals("This axis has 1 warning; to read it: pitchstack check " + file,
                run.lines().get(run.lines().size() - 1));
        CommandRun noted = CommandRun.of("plan", StackTexts.write(folder, StackTexts.NOTED), "--at", "10");
        assertEquals(0, noted.code());
        assertEquals(false, noted.out().contains("pitchstack check"));
    }

    /** Warm, the fence has a warning that it has not at 20 °C; what leads to it must show it. */
    @Test
    void checksTheAxisThatIsNamedAtTheTemperatureThatIsAsked() throws Exception {
        String fence = "../../bundles/pitchstack.help/examples/cross-cut-fence.pitchstack";
        assertEquals(0, CommandRun.of("check", fence).code());
        CommandRun warm = CommandRun.of("check", fence, "--axis", "fence", "--temperature", "28");
        assertEquals(1, warm.code());
        assertTrue(warm.out().startsWith("Cross-cut fence at 28 °C"), warm.out());
        CommandRun plan = CommandRun.of("plan", fence, "--at", "12in", "--temperature", "28");
        assertTrue(plan.lines().contains("This axis has 1 warning; to read it: pitchstack check " + fence + " --temperature 28"),
                plan.out());
    }

    @Test
    void anErrorOfOneAxisLeavesTheOthersToBePlanned() throws Exception {
        String file = StackTexts.write(folder, UNREADABLE);
        assertEquals(0, CommandRun.of("plan", file, "--axis", "Y", "--at", "5").code());
        assertEquals(2, CommandRun.of("plan", file, "--axis", "X", "--at", "5").code());
    }
}
