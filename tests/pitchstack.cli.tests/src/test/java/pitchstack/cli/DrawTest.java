// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command {@code draw}: which file it writes, and when it does not. */
class DrawTest {
    private static final String FENCE = "../../bundles/pitchstack.help/examples/cross-cut-fence.pitchstack";
    private static final String PLATE = "../../bundles/pitchstack.help/examples/grid-plate.pitchstack";

    @TempDir
    private Path folder;

    private Path out(String name) {
        return folder.resolve(name);
    }

    @ParameterizedTest
    @CsvSource({"fence.pdf, %PDF-1.", "fence.svg, <svg ", "fence.dxf, 999", "FENCE.PDF, %PDF-1."})
    void theEndingTellsTheFormat(String name, String begins) throws IOException {
        CommandRun run = CommandRun.of("draw", FENCE, "--out", out(name).toString());
        assertEquals(0, run.code(), run.err());
        String bytes = Files.readString(out(name), StandardCharsets.ISO_8859_1);
        assertTrue(bytes.startsWith(begins), bytes.substring(0, 20));
        assertEquals("Written: " + out(name) + ", one sheet A3, " + bytes.length() + " bytes", run.out().strip());
    }

    @Test
    void jsonNamesWhatWasWritten() throws IOException {
        CommandRun run = CommandRun.of("draw", FENCE, "--out", out("fence.svg").toString(), "--sheet", "a2", "--date", "2026-02-03",
                "--json");
        JsonObject json = JsonParser.parseString(run.out()).getAsJsonObject();
        assertEquals(out("fence.svg").toString(), json.get("written").getAsString());
        assertEquals("svg", json.get("format").getAsString());
        assertEquals("A2", json.get("sheet").getAsString());
        assertEquals("2026-02-03", json.get("date").getAsString());
        assertEquals(Files.size(out("fence.svg")), json.get("bytes").getAsLong());
    }

    @Test
    void neverOverwritesUnasked() throws IOException {
        Files.writeString(out("fence.pdf"), "mine");
        CommandRun run = CommandRun.of("draw", FENCE, "--out", out("fence.pdf").toString());
        assertEquals(2, run.code());
        assertEquals("mine", Files.readString(out("fence.pdf")));
        assertEquals(0, CommandRun.of("draw", FENCE, "--out", out("fence.pdf").toString(), "--force").code());
        assertFalse(Files.readString(out("fence.pdf"), StandardCharsets.ISO_8859_1).contains("mine"));
    }

    @Test
    void givesTheSameBytesOnEveryRun() throws IOException {
        CommandRun.of("draw", FENCE, "--out", out("one.pdf").toString());
        CommandRun.of("draw", FENCE, "--out", out("two.pdf").toString());
        assertArrayEquals(Files.readAllBytes(out("one.pdf")), Files.readAllBytes(out("two.pdf")));
    }

    @Test
    void drawsAllAxesOrTheOneThatIsNamed() throws IOException {
        CommandRun.of("draw", PLATE, "--out", out("all.svg").toString());
        CommandRun.of("draw", PLATE, "--out", out("one.svg").toString(), "--axis", "across");
        assertTrue(Files.readString(out("all.svg")).contains("<g id=\"view-1\">"));
        assertTrue(Files.readString(out("all.svg")).contains("<g id=\"view-2\">"));
        assertFalse(Files.readString(out("one.svg")).contains("<g id=\"view-1\">"));
        assertTrue(Files.readString(out("one.svg")).contains("<g id=\"view-2\">"));
    }

    @Test
    void takesTheScaleThatIsAskedFor() throws IOException {
        CommandRun.of("draw", PLATE, "--out", out("one.svg").toString(), "--axis", "Along", "--scale", "1:5");
        assertTrue(Files.readString(out("one.svg")).contains("Along: side view, 1:5"));
    }

    /** ISO 5456-2: the third angle has the circles left of the cone, the first angle right of it. */
    @Test
    void inchesComeWithTheThirdAngleUnlessTheFirstIsAskedFor() throws IOException {
        CommandRun.of("draw", FENCE, "--out", out("third.svg").toString());
        CommandRun.of("draw", FENCE, "--out", out("third-too.svg").toString(), "--projection", "third");
        CommandRun.of("draw", FENCE, "--out", out("first.svg").toString(), "--projection", "First");
        assertEquals(Files.readString(out("third.svg")), Files.readString(out("third-too.svg")));
        assertFalse(Files.readString(out("third.svg")).equals(Files.readString(out("first.svg"))));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "--sheet A5        | --sheet: “A5” is no sheet here; write A4, A3, A2 or A1.",
        "--scale 1:3       | --scale: “1:3” is no scale of ISO 5455; write one of 50:1, 20:1,",
        "--projection 2    | --projection: “2” is not known; write first or third.",
        "--date 15.1.2026  | --date: “15.1.2026” is no date; write it like 2026-01-15.",
        "--sheet A4        | This stack does not fit on A4; A3 is large enough.",
        "--scale 1:1 --sheet A4 | This stack does not fit on A4 at 1:1;",
        "--axis Up         | “Cross-cut fence” has no axis “Up”; it has “Fence”."})
    void badInputIsOneSentenceAndWritesNothing(String options, String sentence) {
        String[] some = options.strip().split(" ");
        String[] all = new String[some.length + 4];
        System.arraycopy(new String[] {"draw", FENCE, "--out", out("fence.pdf").toString()}, 0, all, 0, 4);
        System.arraycopy(some, 0, all, 4, some.length);
        CommandRun run = CommandRun.of(all);
        assertEquals(2, run.code());
        assertTrue(run.err().contains(sentence), run.err());
        assertEquals(1, run.err().lines().count(), run.err());
        assertFalse(Files.exists(out("fence.pdf")));
    }

    @Test
    void aFileNameWithoutAKnownEndingIsRefused() {
        CommandRun run = CommandRun.of("draw", FENCE, "--out", out("fence.png").toString());
        assertEquals(2, run.code());
        assertTrue(run.err().contains("must end with .pdf or .svg or .dxf"), run.err());
    }

    @Test
    void aStackWithErrorsIsNotDrawn() throws IOException {
        String file = StackTexts.write(folder, StackTexts.COMMON_PRACTICE.replace("5 mm", "0 mm"));
        CommandRun run = CommandRun.of("draw", file, "--out", out("fence.pdf").toString());
        assertEquals(2, run.code());
        assertTrue(run.err().startsWith("pitchstack: Nothing can be drawn on axis “Slide” before this is mended: "), run.err());
        assertFalse(Files.exists(out("fence.pdf")));
    }
}
