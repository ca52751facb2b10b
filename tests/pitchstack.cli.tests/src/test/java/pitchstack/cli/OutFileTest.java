// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that a command writes besides its answer. */
class OutFileTest {
    @TempDir
    private Path folder;

    /** Within 0.05 mm of six positions there are nine stretches, and one line is the header. */
    @Test
    void writesEveryStretchAsCsv() throws Exception {
        Path csv = folder.resolve("gaps.CSV");
        assertEquals(1, coverage("--tolerance", "0.05", "--out", csv.toString()).code());
        List<String> lines = Files.readAllLines(csv);
        assertEquals(10, lines.size());
        assertEquals("from (mm),to (mm),length (mm),reached", lines.get(0));
        assertEquals("-4.9,-4.85,0.05,clean", lines.get(1));
    }

    @Test
    void drawsTheTravelAsSvg() throws Exception {
        Path svg = folder.resolve("strip.svg");
        assertEquals(1, coverage("--tolerance", "0.05", "--out", svg.toString()).code());
        String text = Files.readString(svg);
        assertTrue(text.contains("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"297.0000mm\""), text);
        assertTrue(text.contains("Test bench, axis “Slide”, tolerance 0.050 mm"), text);
    }

    @Test
    void neverOverwritesUnasked() throws Exception {
        Path csv = Files.writeString(folder.resolve("gaps.csv"), "mine");
        assertRefused("--out: there is a file “" + csv + "” already; give another name, or replace it with --force.",
                coverage("--out", csv.toString()));
        assertEquals("mine", Files.readString(csv));
    }

    @Test
    void doesNotTakeALinkThatLeadsNowhereForAFreeName() throws Exception {
        Path link = Files.createSymbolicLink(folder.resolve("link.csv"), Path.of("elsewhere.csv"));
        assertRefused("there is a file “" + link + "” already", coverage("--out", link.toString()));
        assertFalse(Files.exists(folder.resolve("elsewhere.csv")));
    }

    @Test
    void replacesWhenAskedAndKeepsTheOldFile() throws Exception {
        Path csv = Files.writeString(folder.resolve("gaps.csv"), "mine");
        assertEquals(1, coverage("--out", csv.toString(), "--force").code());
        assertTrue(Files.readString(csv).startsWith("from (mm),"));
        assertEquals("mine", Files.readString(folder.resolve("gaps.csv.bak~")));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(3, files.count(), "the stack, the table and the backup, and nothing beside them");
        }
    }

    @Test
    void refusesOtherFormatsAndFoldersThatAreNotThere() throws Exception {
        assertRefused("--out: “gaps.pdf” must end with .csv or .svg, which tells the format.", coverage("--out", "gaps.pdf"));
        assertRefused("--out: “csv” must end with .csv or .svg", coverage("--out", "csv"));
        assertRefused("--out: “bad\0.csv” cannot be the name of a file here.", coverage("--out", "bad\0.csv"));
        assertRefused("there is no folder " + folder.resolve("none"),
                coverage("--out", folder.resolve("none/gaps.csv").toString()));
    }

    private static void assertRefused(String sentence, CommandRun run) {
        assertEquals(2, run.code(), run.out());
        assertEquals("", run.out());
        assertTrue(run.err().contains(sentence), run.err());
    }

    private CommandRun coverage(String... options) throws Exception {
        String file = StackTexts.write(folder, CoverageTest.SIX_POSITIONS);
        return CommandRun.of(Stream.concat(Stream.of("coverage", file), Stream.of(options)).toArray(String[]::new));
    }
}
