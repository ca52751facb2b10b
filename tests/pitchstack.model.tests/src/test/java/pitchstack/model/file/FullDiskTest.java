// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Feature;
import com.google.common.jimfs.Jimfs;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Disks that are full, or that lack what an ordinary one has, played by a file system in memory. */
class FullDiskTest {
    private static final int BLOCK = 512;
    private static final Configuration SMALL = Configuration.unix().toBuilder().setBlockSize(BLOCK)
            .setMaxSize(64 * BLOCK).setWorkingDirectory("/").build();

    @Test
    void saysThatTheDiskIsFullAndLeavesTheOldFile() throws Exception {
        try (FileSystem disk = Jimfs.newFileSystem(SMALL)) {
            Path folder = Files.createDirectory(disk.getPath("/shop"));
            Path file = folder.resolve("a.pitchstack");
            StackFile.save(Samples.titled("old"), file);
            StackFile.save(Samples.titled("older by now"), file);
            List<String> before = Samples.names(folder);
            StackFileException e = assertThrows(StackFileException.class,
                    () -> StackFile.save(Samples.large("new", 2000), file));
            assertTrue(e.getMessage().startsWith("a.pitchstack: the disk is full: "), e.getMessage());
            assertTrue(e.getMessage().endsWith(" are free; make room, or save to another disk."), e.getMessage());
            assertEquals("older by now", Samples.titleIn(file));
            assertEquals("old", Samples.titleIn(folder.resolve("a.pitchstack.bak~")));
            assertEquals(before, Samples.names(folder));
        }
    }

    /** Whatever the room that is left, a save ends with the old file or the new one and nothing half written. */
    @Test
    void leavesTheOldOrTheNewFileWholeWhereverTheDiskRunsFull() throws Exception {
        int refused = 0;
        int saved = 0;
        for (int filled = 0; filled < 60; filled++) {
            try (FileSystem disk = Jimfs.newFileSystem(SMALL)) {
                Path folder = Files.createDirectory(disk.getPath("/shop"));
                Path file = folder.resolve("a.pitchstack");
                StackFile.save(Samples.titled("old"), file);
                Files.write(disk.getPath("/ballast"), new byte[filled * BLOCK]);
                String now;
                try {
                    StackFile.save(Samples.large("new", 100), file);
                    saved++;
                    now = "new";
                } catch (StackFileException e) {
                    refused++;
                    now = "old";
                }
                assertEquals(now, Samples.titleIn(file));
                assertTrue(List.of("a.pitchstack", "a.pitchstack.bak~").containsAll(Samples.names(folder)));
            }
        }
        assertTrue(refused > 5 && saved > 5, refused + " refused, " + saved + " saved");
    }

    @Test
    void copiesTheBackupWhereTheDiskHasNoSecondNames() throws Exception {
        Configuration plain = Configuration.unix().toBuilder().setWorkingDirectory("/")
                .setSupportedFeatures(Feature.SYMBOLIC_LINKS, Feature.FILE_CHANNEL).setAttributeViews("basic").build();
        try (FileSystem disk = Jimfs.newFileSystem(plain)) {
            Path folder = Files.createDirectory(disk.getPath("/shop"));
            Path file = folder.resolve("a.pitchstack");
            StackFile.save(Samples.titled("one"), file);
            StackFile.save(Samples.titled("two"), file);
            StackFile.save(Samples.titled("three"), file);
            assertEquals("three", Samples.titleIn(file));
            assertEquals("two", Samples.titleIn(folder.resolve("a.pitchstack.bak~")));
            assertEquals(List.of("a.pitchstack", "a.pitchstack.bak~"), Samples.names(folder));
        }
    }
}
