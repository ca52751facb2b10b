// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pitchstack.core.check.Finding;
import pitchstack.core.check.Severity;
import pitchstack.model.Axis;
import pitchstack.model.file.StackFile;

/** What every example that is shipped has to be. */
class ExampleFilesTest {
    private static final int A_DOZEN = 12;
    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"cross-cut-fence", "ram-shim", "slide-plate", "grid-plate", "index-table"})
    void isLaidOutAsTheProgramWritesIt(String name) throws Exception {
        Example example = Example.load(name);
        Path saved = folder.resolve("saved.pitchstack");
        StackFile.save(example.positioner(), saved);
        assertEquals(Files.readString(example.file()), Files.readString(saved));
    }

    @ParameterizedTest
    @ValueSource(strings = {"cross-cut-fence", "ram-shim", "slide-plate", "grid-plate", "index-table"})
    void saysThatItIsInvented(String name) throws Exception {
        assertTrue(Example.load(name).positioner().getTitleBlock().getNotes().startsWith("Invented data"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"cross-cut-fence", "ram-shim", "slide-plate", "grid-plate", "index-table"})
    void hasNothingThatTheChecksWarnOf(String name) throws Exception {
        List<String> findings = Example.load(name).analysis().findings().stream()
                .filter(finding -> finding.severity() != Severity.NOTE).map(Finding::sentence).toList();
        assertEquals(List.of(), findings);
    }

    @ParameterizedTest
    @ValueSource(strings = {"cross-cut-fence", "ram-shim", "slide-plate"})
    void hasADozenTargetsAndOneRangeOfMarkedTeeth(String name) throws Exception {
        Axis axis = Example.load(name).analysis().axis();
        assertTrue(axis.getTargets().size() >= A_DOZEN);
        assertEquals(1, axis.getStages().stream().mapToInt(stage -> stage.getBaseRow().getWorn().size()
                + stage.getRiderRow().getWorn().size()).sum());
    }

    @Test
    void isNotForgottenHere() throws Exception {
        try (Stream<Path> files = Files.list(Example.load("ram-shim").file().getParent())) {
            assertEquals(List.of("cross-cut-fence.pitchstack", "grid-plate.pitchstack", "index-table.pitchstack",
                    "ram-shim.pitchstack", "slide-plate.pitchstack"),
                    files.map(file -> file.getFileName().toString())
                            .filter(name -> name.endsWith(StackFile.EXTENSION)).sorted().toList());
        }
    }
}
