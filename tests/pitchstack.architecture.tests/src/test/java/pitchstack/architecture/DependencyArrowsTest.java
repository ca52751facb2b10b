// SPDX-License-Identifier: EPL-2.0
package pitchstack.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The bundles of this source tree, as they have just been built. */
class DependencyArrowsTest {
    private static final Path BUNDLES = Path.of(System.getProperty("basedir", "")).toAbsolutePath()
            .resolveSibling("..").normalize().resolve("bundles");
    private final Folders folders = new Folders(BUNDLES, BundleTable.PITCHSTACK);

    @Test
    void pointAsTheTableSays() throws Exception {
        assertEquals("", String.join("\n", folders.complaints()));
    }

    /** Guards against looking in the wrong place and finding nothing wrong there. */
    @Test
    void areReadFromTheBundlesThatThereAre() throws Exception {
        List<String> names = folders.list().stream().map(folder -> folder.getFileName().toString()).toList();
        assertTrue(names.containsAll(List.of("pitchstack.core", "pitchstack.model", "pitchstack.analysis",
                "pitchstack.edit", "pitchstack.app")), names.toString());
        Path core = BUNDLES.resolve("pitchstack.core/target/classes");
        assertTrue(new ClassFileImporter().importPath(core).contain("pitchstack.core.stack.AxisSpec"));
    }

    @Test
    void leaveGefToTheEditorAloneAndKeepEditorAndViewsApart() {
        for (BundleRule rule : BundleTable.PITCHSTACK.rules()) {
            assertEquals(List.of("pitchstack.ui.editor", "pitchstack.gefcompat").contains(rule.name()),
                    rule.mayUseForeign("org.eclipse.gef"), rule.name());
        }
        assertFalse(BundleTable.PITCHSTACK.mayUse("pitchstack.ui.editor").contains("pitchstack.ui.views"));
        assertFalse(BundleTable.PITCHSTACK.mayUse("pitchstack.ui.views").contains("pitchstack.ui.editor"));
    }

    /** Asking for everything that a bundle may use ends only where the table has no circle. */
    @Test
    void goRoundInNoCircle() {
        for (BundleRule rule : BundleTable.PITCHSTACK.rules()) {
            assertFalse(BundleTable.PITCHSTACK.mayUse(rule.name()).contains(rule.name()), rule.name());
        }
    }
}
