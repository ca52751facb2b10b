// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Work that takes long: it tells how far it is, and can be stopped without leaving anything behind. */
class LongWorkTest {
    private static final String FENCE = "../../bundles/pitchstack.help/examples/cross-cut-fence.pitchstack";
    /** Takes several seconds in the cheapest order. */
    private static final int MANY = 900;

    @TempDir
    private Path folder;

    @Test
    void saysNothingInTheFirstSecondAndThenALineEveryThree() {
        StringWriter err = new StringWriter();
        AtomicLong clock = new AtomicLong(Long.MAX_VALUE - 1);
        Watch watch = new Watch(new PrintWriter(err), clock::get);
        long begun = clock.get();
        for (int tenth = 0; tenth <= 50; tenth++) {
            clock.set(begun + TimeUnit.MILLISECONDS.toNanos(100L * tenth));
            watch.done(tenth, 200);
        }
        assertEquals(List.of("pitchstack: still working, this part is done to 5 %; Ctrl+C stops it.",
                "pitchstack: still working, this part is done to 20 %; Ctrl+C stops it."), err.toString().lines().toList());
    }

    @Test
    void endsWithoutAnAnswerAndWithoutAFileWhereItIsStopped() throws Exception {
        Path list = Files.writeString(folder.resolve("list.csv"), "position\n12\n24\n");
        for (List<String> command : List.of(List.of("table", FENCE, "--targets", list.toString()),
                List.of("wear", FENCE, "--targets", list.toString()), List.of("coverage", FENCE, "--step", "0.01in"))) {
            Path csv = folder.resolve("out.csv");
            List<String> arguments = new ArrayList<>(command);
            arguments.addAll(List.of("--out", csv.toString(), "--json"));
            StringWriter out = new StringWriter();
            StringWriter err = new StringWriter();
            Watch stopped = new Watch(new PrintWriter(err), System::nanoTime);
            stopped.cancel();
            assertEquals(130, Main.run(arguments.toArray(String[]::new), new PrintWriter(out), new PrintWriter(err), stopped),
                    command.toString());
            assertEquals("", out.toString());
            assertEquals("pitchstack: Stopped before the work was done; no answer, and no file was written.",
                    err.toString().strip());
            assertFalse(Files.exists(csv));
        }
    }

    @Test
    void endsCleanlyOnCtrlC() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/bin/kill")), "Signals are sent by a command of Linux");
        Path err = folder.resolve("err");
        Process process = start(err);
        try {
            while (process.isAlive() && !Files.readString(err).contains("still working")) {
                Thread.sleep(50);
            }
            assertTrue(process.isAlive(), "it was to take longer than that");
            new ProcessBuilder("/bin/kill", "-INT", Long.toString(process.pid())).start().waitFor();
            assertTrue(process.waitFor(30, TimeUnit.SECONDS));
        } finally {
            process.destroyForcibly();
        }
        assertEquals(130, process.exitValue());
        List<String> lines = Files.readAllLines(err, StandardCharsets.UTF_8);
        assertEquals("pitchstack: Stopped before the work was done; no answer, and no file was written.",
                lines.get(lines.size() - 1));
        assertEquals("", Files.readString(folder.resolve("out")));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(List.of("err", "list.csv", "out"), files.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }

    private Process start(Path err) throws Exception {
        Random random = new Random(20261125);
        StringBuilder list = new StringBuilder("position (in)\n");
        for (int i = 0; i < MANY; i++) {
            list.append(random.nextInt(9600) / 100.0).append('\n');
        }
        Files.writeString(folder.resolve("list.csv"), list);
        Files.createFile(err);
        // Where the tests run in the background, the shell has them ignore what Ctrl+C sends.
        return new ProcessBuilder("env", "--default-signal=INT", Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")), "pitchstack.cli.Main",
                "table", FENCE, "--targets", folder.resolve("list.csv").toString(), "--order", "free", "--out",
                folder.resolve("plan.csv").toString())
                .redirectOutput(folder.resolve("out").toFile()).redirectError(err.toFile()).start();
    }
}
