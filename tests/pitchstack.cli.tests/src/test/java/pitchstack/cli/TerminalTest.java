// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as a process of its own: its streams and exit codes. */
class TerminalTest {
    @TempDir
    private Path folder;

    @Test
    void writesUtf8EvenWhereTheLocaleHasNone() throws Exception {
        Path out = folder.resolve("out");
        int code = run(out, folder.resolve("err"), "plan", StackTexts.write(folder, StackTexts.ROTARY), "--at", "1");
        assertEquals(0, code);
        List<String> lines = Files.readAllLines(out, StandardCharsets.UTF_8);
        assertEquals("Test bench, axis “Table”", lines.get(0));
        assertTrue(lines.contains("Reached: 1°00'00\", exactly on the target"), lines.toString());
    }

    @Test
    void endsWithTheExitCodeOfTheCommand() throws Exception {
        Path out = folder.resolve("out");
        Path err = folder.resolve("err");
        String file = StackTexts.write(folder, StackTexts.COMMON_PRACTICE);
        assertEquals(1, run(out, err, "plan", file, "--at", "0.15"));
        assertEquals("", Files.readString(err));
        assertEquals(2, run(out, err, "plan", file, "--at", "20 µs"));
        assertEquals("", Files.readString(out));
        assertEquals(1, Files.readAllLines(err, StandardCharsets.UTF_8).size());
    }

    @Test
    void doesNotEndWellWhereTheAnswerCannotBeWritten() throws Exception {
        Path full = Path.of("/dev/full");
        assumeTrue(Files.exists(full), "A device that is always full exists on Linux only");
        Path err = folder.resolve("err");
        assertEquals(2, run(full, err, "plan", StackTexts.write(folder, StackTexts.COMMON_PRACTICE), "--at", "0.1"));
        assertEquals(List.of("pitchstack: The answer could not be written; the disk is full or the reader has gone."),
                Files.readAllLines(err));
    }

    @Test
    void writesAPlainSignWhereTheCodePageHasNone() {
        assertEquals("stage \"Größe\" 20 µm, 1°02'03\"", written("stage “Größe” 20 µm, 1°02′03″", Charset.forName("IBM850")));
        assertEquals("stage \"A\" 20 um", written("stage “A” 20 µm", StandardCharsets.US_ASCII));
        assertEquals("stage “A” 20 µm, 1°", written("stage “A” 20 µm, 1°", StandardCharsets.UTF_8));
    }

    private static String written(String text, Charset charset) {
        StringWriter written = new StringWriter();
        Writer plain = new PlainWriter(written, charset.newEncoder());
        try (PrintWriter out = new PrintWriter(plain)) {
            out.print(text);
        }
        return written.toString();
    }

    /** Runs the program under a locale without any characters but ASCII. */
    private static int run(Path out, Path err, String... arguments) throws Exception {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp", System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                "pitchstack.cli.Main"));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
        builder.environment().put("LC_ALL", "C");
        return builder.start().waitFor();
    }
}
