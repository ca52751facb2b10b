// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFileException.Problem;

/** What saving does to a real folder. */
class SavingTest {
    @TempDir
    private Path folder;

    private Path file(String name) {
        return folder.resolve(name);
    }

    @Test
    void keepsThePreviousFileAsABackupAndNothingElse() throws Exception {
        Path file = file("a.pitchstack");
        StackFile.save(Samples.titled("one"), file);
        assertEquals(List.of("a.pitchstack"), Samples.names(folder));
        StackFile.save(Samples.titled("two"), file);
        StackFile.save(Samples.titled("three"), file);
        assertEquals("three", Samples.titleIn(file));
        assertEquals("two", Samples.titleIn(file("a.pitchstack.bak~")));
        assertEquals(List.of("a.pitchstack", "a.pitchstack.bak~"), Samples.names(folder));
    }

    /** The state after a kill between the backup and the renaming: both names lead to one file. */
    @Test
    void goesOnFromABackupThatIsStillTheFileItself() throws Exception {
        Path file = file("a.pitchstack");
        StackFile.save(Samples.titled("one"), file);
        Files.createLink(file("a.pitchstack.bak~"), file);
        StackFile.save(Samples.titled("two"), file);
        assertEquals("two", Samples.titleIn(file));
        assertEquals("one", Samples.titleIn(file("a.pitchstack.bak~")));
        assertEquals(List.of("a.pitchstack", "a.pitchstack.bak~"), Samples.names(folder));
    }

    @Test
    void followsSymbolicLinksAndLeavesThem() throws Exception {
        Path shelf = Files.createDirectory(file("shelf"));
        Path real = shelf.resolve("real.pitchstack");
        Path near = Files.createSymbolicLink(shelf.resolve("near.pitchstack"), Path.of("real.pitchstack"));
        Path link = Files.createSymbolicLink(file("link.pitchstack"), Path.of("shelf", "near.pitchstack"));
        StackFile.save(Samples.titled("one"), link);
        StackFile.save(Samples.titled("two"), link);
        assertTrue(Files.isSymbolicLink(link) && Files.isSymbolicLink(near));
        assertEquals("two", Samples.titleIn(real));
        assertEquals(List.of("near.pitchstack", "real.pitchstack", "real.pitchstack.bak~"), Samples.names(shelf));
    }

    @Test
    void refusesLinksThatLeadRoundInACircle() throws Exception {
        Path a = file("a.pitchstack");
        Files.createSymbolicLink(a, Path.of("b.pitchstack"));
        Files.createSymbolicLink(file("b.pitchstack"), Path.of("a.pitchstack"));
        refuses(a, "a.pitchstack: its symbolic links lead round in a circle; save under another name.");
        assertEquals(2, Samples.names(folder).size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"rw-------", "rw-r-----", "rw-rw-rw-", "rwxr-xr-x"})
    void keepsThePermissionsOfTheFile(String permissions) throws Exception {
        Path file = file("a.pitchstack");
        StackFile.save(Samples.titled("one"), file);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(permissions));
        StackFile.save(Samples.titled("two"), file);
        assertEquals(permissions, PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
        assertEquals(permissions,
                PosixFilePermissions.toString(Files.getPosixFilePermissions(file("a.pitchstack.bak~"))));
    }

    @Test
    void givesANewFileThePermissionsThatNewFilesHaveHere() throws Exception {
        Path file = file("a.pitchstack");
        StackFile.save(Samples.titled("one"), file);
        Path other = Files.createFile(file("other"));
        assertEquals(Files.getPosixFilePermissions(other), Files.getPosixFilePermissions(file));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Säge 50% #1 ?.pitchstack", "\ud83d\udd27.pitchstack", "-rf.pitchstack", "no ending", "a&b'\".pitchstack"})
    void takesAnyFileName(String name) throws Exception {
        Path file = file(name);
        StackFile.save(Samples.titled("one"), file);
        StackFile.save(Samples.titled("two"), file);
        assertEquals("two", Samples.titleIn(file));
        assertEquals("one", Samples.titleIn(file(name + ".bak~")));
    }

    @Test
    void takesTheLongestNameAndSaysWhenItsBackupWouldBeTooLong() throws Exception {
        Path longest = file("n".repeat(255 - ".bak~".length()));
        StackFile.save(Samples.titled("one"), longest);
        StackFile.save(Samples.titled("two"), longest);
        assertEquals("two", Samples.titleIn(longest));
        Path longer = file("n".repeat(255));
        StackFile.save(Samples.titled("one"), longer);
        StackFileException e = assertThrows(StackFileException.class,
                () -> StackFile.save(Samples.titled("two"), longer));
        assertTrue(e.getMessage().contains("so nothing was saved; move it away, or save under another name."),
                e.getMessage());
        assertEquals("one", Samples.titleIn(longer));
        assertEquals(3, Samples.names(folder).size());
    }

    @Test
    void savesToANameWithoutAFolder() throws Exception {
        Path bare = Path.of("bare-" + ProcessHandle.current().pid() + ".pitchstack");
        try {
            StackFile.save(Samples.titled("one"), bare);
            assertEquals("one", Samples.titleIn(bare));
        } finally {
            Files.deleteIfExists(bare);
        }
    }

    @Test
    void refusesAFolderInTheWayOfTheFileOrOfItsBackup() throws Exception {
        Path taken = Files.createDirectory(file("taken.pitchstack"));
        refuses(taken, "taken.pitchstack: a folder or a device has this name; save under another name.");
        Path file = file("a.pitchstack");
        StackFile.save(Samples.titled("one"), file);
        Files.createDirectory(file("a.pitchstack.bak~"));
        refuses(file, "a.pitchstack: the backup copy a.pitchstack.bak~ cannot be written (a folder has this name), so"
                + " nothing was saved; move it away, or save under another name.");
        assertEquals("one", Samples.titleIn(file));
        assertEquals(List.of("a.pitchstack", "a.pitchstack.bak~", "taken.pitchstack"), Samples.names(folder));
    }

    @Test
    void refusesAFolderThatDoesNotExist() throws Exception {
        refuses(file("none").resolve("a.pitchstack"), "a.pitchstack: there is no folder " + file("none")
                + "; make it, or save to another folder.");
        assertEquals(List.of(), Samples.names(folder));
    }

    @Test
    void refusesAFolderAndAFileThatArePartOfTheSystemOnLinux() throws Exception {
        // Even the administrator cannot make files here, so this holds for every user.
        Path system = Path.of("/sys/kernel");
        assumeTrue(Files.isDirectory(system), "only Linux has this folder");
        StackFileException e = assertThrows(StackFileException.class,
                () -> StackFile.save(Samples.titled("one"), system.resolve("a.pitchstack")));
        assertTrue(e.getMessage().startsWith("a.pitchstack: the "), e.getMessage());
        assertTrue(e.getMessage().endsWith("; save to another folder."), e.getMessage());
        assertEquals(Problem.UNWRITABLE, e.problem());
    }

    @Test
    void refusesWriteProtectedFoldersAndFiles() throws Exception {
        assumeFalse("root".equals(System.getProperty("user.name")), "nothing is write-protected for root");
        Path shelf = Files.createDirectory(file("shelf"));
        Path file = shelf.resolve("a.pitchstack");
        StackFile.save(Samples.titled("one"), file);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
        refuses(file, "a.pitchstack: the file is write-protected; save under another name, or lift the protection.");
        Files.setPosixFilePermissions(shelf, PosixFilePermissions.fromString("r-xr-xr-x"));
        try {
            refuses(shelf.resolve("b.pitchstack"), "b.pitchstack: the folder " + shelf + " takes no new files; save to"
                    + " another folder.");
        } finally {
            Files.setPosixFilePermissions(shelf, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
        assertEquals(List.of("a.pitchstack"), Samples.names(shelf));
        assertFalse(Files.exists(shelf.resolve("b.pitchstack")));
    }

    private static void refuses(Path file, String message) {
        StackFileException e = assertThrows(StackFileException.class,
                () -> StackFile.save(Samples.titled("new"), file));
        assertEquals(message, e.getMessage());
        assertEquals(Problem.UNWRITABLE, e.problem());
    }

    @Test
    void keepsNoBackupOfACopyThatOnlyServesUntilTheNext() throws IOException {
        Path copy = folder.resolve("copy.unsaved~");
        Positioner positioner = PitchstackFactory.eINSTANCE.createPositioner();
        for (String title : List.of("first", "second")) {
            positioner.setTitle(title);
            StackFile.saveCopy(positioner, copy);
            assertEquals(title, StackFile.load(copy).positioner().getTitle());
        }
        try (Stream<Path> all = Files.list(folder)) {
            assertEquals(List.of(copy), all.toList());
        }
    }
}
