// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.model.file.EndlessSaver.Way;

/** Kills a program while it saves: the file is always one of the two whole documents. */
class KilledWhileSavingTest {
    private static final Duration BUDGET = Duration.ofSeconds(8);
    private static final int MOST_KILLS = 40;
    /** Even where the machine is so busy that the time is up. */
    private static final int FEWEST_KILLS = 10;
    /** Longer than several saves, so that kills fall at all stages of one. */
    private static final int LONGEST_WAIT_MS = 150;
    /** About a megabyte each, and told apart by every line. */
    private static final int TARGETS = 15_000;
    private final List<byte[]> whole = new ArrayList<>();
    @TempDir
    private Path folder;
    private Path file;
    private Path odd;
    private Path even;

    @BeforeEach
    void makeTheDocuments() throws Exception {
        file = folder.resolve("killed.pitchstack");
        odd = document("odd");
        even = document("even");
    }

    private Path document(String title) throws Exception {
        Path document = folder.resolve(title);
        StackFile.save(Samples.large(title, TARGETS), document);
        whole.add(Files.readAllBytes(document));
        return document;
    }

    @Test
    void leavesAWholeFileAndAWholeBackupWheneverItIsKilledWithTheDisk() throws Exception {
        staysWhole(Way.BYTES);
    }

    @Test
    void leavesAWholeFileAndAWholeBackupWheneverItIsKilled() throws Exception {
        staysWhole(Way.WHOLE);
        assertTrue(List.of("odd", "even").contains(Samples.titleIn(file)));
    }

    /** The same kills break the file of a program that writes over it, so they do fall into the writing. */
    @Test
    void findsTheHalfWrittenFileOfAProgramThatWritesInPlace() throws Exception {
        Random random = new Random();
        for (int kill = 0; kill < MOST_KILLS; kill++) {
            saveAndKill(Way.IN_PLACE, random);
            if (!isWhole(file)) {
                return;
            }
        }
        fail("no kill of " + MOST_KILLS + " fell into the writing, so this test shows nothing");
    }

    private void staysWhole(Way way) throws Exception {
        long seed = new Random().nextLong();
        Random random = new Random(seed);
        Instant end = Instant.now().plus(BUDGET);
        int kills = 0;
        for (; kills < MOST_KILLS && (kills < FEWEST_KILLS || Instant.now().isBefore(end)); kills++) {
            saveAndKill(way, random);
            assertTrue(isWhole(file), "kill " + kills + " of seed " + seed + " left half a file");
            Path backup = folder.resolve(file.getFileName() + StackFile.BACKUP_SUFFIX);
            assertTrue(!Files.exists(backup) || isWhole(backup), "kill " + kills + " of seed " + seed
                    + " left half a backup");
        }
    }

    private boolean isWhole(Path some) throws IOException {
        byte[] found = Files.readAllBytes(some);
        return whole.stream().anyMatch(document -> Arrays.equals(document, found));
    }

    private void saveAndKill(Way way, Random random) throws Exception {
        Process saver = new ProcessBuilder(java(), "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp",
                System.getProperty("java.class.path"), EndlessSaver.class.getName(), way.name(), file.toString(),
                odd.toString(), even.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
        try {
            assertTrue(saver.getInputStream().read() >= 0, "the program ended before its first save");
            Thread.sleep(random.nextInt(LONGEST_WAIT_MS));
        } finally {
            saver.destroyForcibly().waitFor();
        }
    }

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }
}
