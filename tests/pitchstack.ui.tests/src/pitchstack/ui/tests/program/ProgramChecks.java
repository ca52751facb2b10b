// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.model.file.StackFile;
import pitchstack.ui.tests.views.Stacks;

/** What outlasts a program: unsaved work when it is killed, and the layout of its window. */
class ProgramChecks {
    @TempDir
    private Path folder;
    private Path file;

    @BeforeEach
    void save() throws IOException {
        file = folder.toRealPath().resolve("fence.pitchstack");
        StackFile.save(Stacks.millimetres(), file);
    }

    private Path home(String name) {
        return folder.resolve(name);
    }

    private List<Path> copies() throws IOException {
        try (Stream<Path> all = Files.list(file.getParent())) {
            return all.filter(path -> path.getFileName().toString().startsWith("fence.pitchstack.unsaved.")).toList();
        }
    }

    private int index() throws IOException {
        return StackFile.load(file).positioner().getAxes().get(0).getStages().get(0).getIndex();
    }

    private void awaitCopy() {
        Program.until("the work is kept beside the file", () -> {
            try {
                return !copies().isEmpty();
            } catch (IOException e) {
                throw new AssertionError(e);
            }
        });
    }

    @Test
    void offersWorkAfterAKillAndTakesItBack() throws IOException, InterruptedException {
        try (Program killed = Program.start(Script.CHANGE, home("home"), file)) {
            assertEquals("changed", killed.says());
            awaitCopy();
            killed.kill();
        }
        assertEquals(0, index(), "the file is as it was saved");
        assertEquals(1, copies().size());
        // Without naming the file: the program knows what it left.
        try (Program next = Program.start(Script.RECOVER, home("home"), null)) {
            assertEquals("index " + Script.INDEX, next.says());
            next.ends();
        }
        assertEquals(Script.INDEX, index());
        assertEquals(List.of(), copies());
    }

    @Test
    void leavesWorkOfAProgramThatRunsAndOffersItOnceThatIsKilled() throws IOException, InterruptedException {
        try (Program first = Program.start(Script.CHANGE, home("one"), file)) {
            assertEquals("changed", first.says());
            awaitCopy();
            assertTrue(copies().get(0).toString().contains("." + first.number() + "-"), copies().toString());
            try (Program second = Program.start(Script.WATCH, home("two"), file)) {
                assertEquals("quiet", second.says());
                second.ends();
            }
            assertFalse(copies().isEmpty(), "the first one's copy stays");
            first.kill();
        }
        try (Program third = Program.start(Script.WATCH, home("two"), file)) {
            assertEquals("asked", third.says());
            third.ends();
        }
    }

    @Test
    void findsTheWindowAsItWasLeftAndPutsItBackOnRequest() throws IOException, InterruptedException {
        String usual = told(Script.TELL);
        assertTrue(usual.contains("views.wear") && !usual.contains("views.guide"), usual);
        String arranged = told(Script.ARRANGE);
        assertTrue(!arranged.contains("views.wear") && arranged.contains("views.guide"), arranged);
        assertEquals(arranged, told(Script.TELL));
        String reset = told(Script.RESET);
        assertEquals(usual.replaceFirst(" in .*", ""), reset.replaceFirst(" in .*", ""));
    }

    private String told(Script script) throws IOException, InterruptedException {
        try (Program program = Program.start(script, home("home"), null)) {
            String said = program.says();
            program.ends();
            return said;
        }
    }
}
