// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.Platform;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;

/** What stands on the screen right after the start. */
class WindowTest {

    @Test
    void opensOneWindowWithOurTitle() {
        assertEquals(1, PlatformUI.getWorkbench().getWorkbenchWindowCount());
        assertTrue(window().getShell().isVisible());
        assertEquals("Pitchstack", window().getShell().getText());
        assertEquals(4, window().getShell().getImages().length, "icon sizes of the product");
    }

    @Test
    void arrangesOutlineAndPropertiesAroundTheEditorArea() {
        IWorkbenchPage page = window().getActivePage();
        assertEquals("pitchstack.app.perspective.stack", page.getPerspective().getId());
        assertTrue(page.isEditorAreaVisible());
        assertNotNull(page.findView(IPageLayout.ID_OUTLINE));
        assertNotNull(page.findView(IPageLayout.ID_PROP_SHEET));
    }

    /** What is kept while documents without a file are open, a start after a crash could not show. */
    @Test
    void keepsItsLayoutAtItsEndOnly() {
        assertEquals(0, Platform.getPreferencesService().getInt("org.eclipse.ui.workbench", "WORKBENCH_SAVE_INTERVAL", -1, null));
    }

    @Test
    void startsWithoutAnErrorInTheLog() throws IOException {
        assertEquals(List.of(), errors(Platform.getLogFileLocation().toFile().toPath()));
    }

    /** An entry of the log begins with the bundle and a severity, of which 4 is an error. */
    private static List<String> errors(Path log) throws IOException {
        if (!Files.exists(log)) {
            return List.of();
        }
        return Files.readAllLines(log).stream().filter(line -> line.matches("!ENTRY \\S+ 4 .*")).toList();
    }

    private static IWorkbenchWindow window() {
        return PlatformUI.getWorkbench().getActiveWorkbenchWindow();
    }
}
