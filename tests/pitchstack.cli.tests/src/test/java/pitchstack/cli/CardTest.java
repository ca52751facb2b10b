// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The command that writes a setting card. */
class CardTest {
    private static final String FENCE = "../../bundles/pitchstack.help/examples/cross-cut-fence.pitchstack";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"pdf", "html", "xlsx", "csv"})
    void writesEachFormatTheSameOnEveryRun(String ending) throws Exception {
        Path one = folder.resolve("one." + ending);
        Path two = folder.resolve("two." + ending);
        assertEquals(1, card(one, "--date", "2026-02-03").code(), "two targets of the fence cannot be set");
        assertEquals(1, card(two, "--date", "2026-02-03").code());
        assertArrayEquals(Files.readAllBytes(one), Files.readAllBytes(two));
    }

    @Test
    void saysWhatItWrote() {
        Path file = folder.resolve("fence.csv");
        CommandRun run = card(file);
        assertTrue(run.out().startsWith("Written: " + file + ", 13 targets, 2 of them left out; the card says why, "), run.out());
        assertTrue(run.out().contains("\nLeft out: “Beam”: 98.000 in is beyond the travel"), run.out());
        String json = card(file, "--force", "--json", "--date", "2026-02-03").out();
        assertTrue(json.contains("\"format\":\"csv\",\"date\":\"2026-02-03\",\"targets\":13,\"leftOut\":2,\"bytes\":"), json);
    }

    /** 12 in is 48 teeth of 1/4 in, and 10 in is 40. */
    @Test
    void takesTheTargetsOfAList() throws Exception {
        Path list = Files.writeString(folder.resolve("list.csv"), "name,position\nLong,12\nShort,10\n");
        Path file = folder.resolve("list-card.csv");
        assertEquals(0, card(file, "--targets", list.toString()).code());
        List<String> lines = Files.readAllLines(file);
        assertTrue(lines.get(1).startsWith("1,Long,304.8,0.0508,304.8,0,48,0,48,0,48,0,"), lines.get(1));
        assertTrue(lines.get(2).startsWith("2,Short,254,0.0508,254,0,40,0,-8,0,40,0,"), lines.get(2));
    }

    @Test
    void neverOverwritesUnasked() throws Exception {
        Path file = Files.writeString(folder.resolve("fence.pdf"), "mine");
        CommandRun run = card(file);
        assertEquals(2, run.code());
        assertTrue(run.err().contains("there is a file “" + file + "” already"), run.err());
        assertEquals("mine", Files.readString(file));
    }

    @Test
    void refusesWhatMakesNoSense() {
        Path file = folder.resolve("fence.pdf");
        assertRefused("--order: a card has the steps from home for every target anyway", card(file, "--order", "from-start"));
        assertRefused("--date: “tomorrow” is no date; write it like 2026-01-15.", card(file, "--date", "tomorrow"));
        assertRefused("must end with .pdf or .html or .xlsx or .csv", card(folder.resolve("fence.doc")));
        assertFalse(Files.exists(file));
    }

    private static void assertRefused(String sentence, CommandRun run) {
        assertEquals(2, run.code(), run.out());
        assertTrue(run.err().contains(sentence), run.err());
    }

    private static CommandRun card(Path out, String... more) {
        String[] arguments = new String[4 + more.length];
        System.arraycopy(new String[] {"card", FENCE, "--out", out.toString()}, 0, arguments, 0, 4);
        System.arraycopy(more, 0, arguments, 4, more.length);
        return CommandRun.of(arguments);
    }
}
