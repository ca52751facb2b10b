// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.eclipse.core.runtime.Platform;

/** A program of its own, of the same bundles as this one. */
final class Program implements AutoCloseable {
    /** A start takes a few seconds; a machine that builds at the same time needs longer. */
    private static final long PATIENCE_MS = 90_000;

    private final Process process;
    private final Path says;

    private Program(Process process, Path says) {
        this.process = process;
        this.says = says;
    }

    /**
     * Starts one.
     *
     * @param script what is done in it
     * @param home where it keeps its settings, which a later one may use again
     * @param file what it opens; {@code null} for nothing
     */
    static Program start(Script script, Path home, Path file) throws IOException {
        Path configuration = Files.createTempDirectory(Files.createDirectories(home), "configuration");
        Files.copy(local(Platform.getConfigurationLocation().getURL()).resolve("config.ini"),
                configuration.resolve("config.ini"));
        Path says = configuration.resolve("says.txt");
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-D" + Driven.SCRIPT + "=" + script, "-D" + Driven.SAYS + "=" + says,
                "-cp", local(URI.create(System.getProperty("osgi.framework")).toURL()).toString(),
                "org.eclipse.core.runtime.adaptor.EclipseStarter", "-configuration", configuration.toString(),
                "-data", home.resolve("data").toString(), "-application", Driven.ID, "-product", "pitchstack.app.product"));
        Optional.ofNullable(System.getProperty("osgi.dev")).ifPresent(dev -> command.addAll(List.of("-dev", dev)));
        if (file != null) {
            command.addAll(List.of("-open", file.toString()));
        }
        File log = configuration.resolve("output.txt").toFile();
        return new Program(new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log).start(), says);
    }

    private static Path local(URL place) {
        return new File(place.getPath()).toPath();
    }

    /** What was said in it, once it has been. */
    String says() throws IOException {
        until("something is said", () -> Files.exists(says) || !process.isAlive());
        assertTrue(Files.exists(says), () -> "it ended without a word: " + output());
        return Files.readString(says);
    }

    private String output() {
        try {
            return Files.readString(says.resolveSibling("output.txt"));
        } catch (IOException e) {
            return e.toString();
        }
    }

    /** Waits until it has ended by itself, as it should. */
    void ends() throws InterruptedException {
        assertTrue(process.waitFor(PATIENCE_MS, TimeUnit.MILLISECONDS), "it goes on");
        assertEquals(0, process.exitValue(), this::output);
    }

    /** Ends it at once, without a chance to clean up: the system's kill signal. */
    void kill() throws InterruptedException {
        process.destroyForcibly();
        process.waitFor();
    }

    /** The system's number of it. */
    long number() {
        return process.pid();
    }

    static void until(String what, BooleanSupplier so) {
        long end = System.currentTimeMillis() + PATIENCE_MS;
        while (!so.getAsBoolean()) {
            assertTrue(System.currentTimeMillis() < end, "waited in vain until " + what);
            try {
                Thread.sleep(50);
            } catch (InterruptedException e) {
                throw new AssertionError(e);
            }
        }
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
