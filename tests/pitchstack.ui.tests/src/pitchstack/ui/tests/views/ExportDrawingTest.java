// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.Platform;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.model.file.StackFile;

/** File > Export Drawing. */
class ExportDrawingTest {
    @TempDir
    private Path folder;
    private Bench bench;
    private ExportDesk desk;

    @BeforeEach
    void open() throws IOException {
        bench = new Bench(folder);
        String example = FileLocator.toFileURL(
                Platform.getBundle("pitchstack.help").getEntry("examples/cross-cut-fence.pitchstack")).getPath();
        bench.open("fence", StackFile.load(new File(example).toPath()).positioner());
        desk = new ExportDesk(bench, "Export Drawing", "pitchstack.ui.views.exportDrawing");
    }

    @AfterEach
    void close() {
        bench.clear();
    }

    @Test
    void writesTheSheetThatIsShownAndKeepsTheChoices() throws IOException {
        desk.export(dialog -> {
            desk.choose(dialog, "SVG, for the screen");
            desk.choose(dialog, "A2");
            desk.untilSaid(dialog, "One sheet A2, ");
            desk.picture(dialog, "export-drawing");
            desk.finishOnceReady(dialog);
        });
        Path written = folder.resolve("fence.svg");
        assertTrue(Files.readString(written).contains("width=\"594mm\""), "A2 lies 594 mm wide (ISO 216)");
        desk.export(dialog -> {
            desk.untilSaid(dialog, "One sheet A2, ");
            assertFalse(desk.finish(dialog).isEnabled(), "the file is there already");
            assertTrue(desk.said(dialog, "fence.svg exists already"));
            desk.choose(dialog, "PDF, for paper");
            desk.choose(dialog, "Smallest that fits");
            desk.finishOnceReady(dialog);
        });
        assertTrue(Files.readString(folder.resolve("fence.pdf"), StandardCharsets.ISO_8859_1).startsWith("%PDF-"));
    }

    @Test
    void saysWhichSheetIsLargeEnough() {
        desk.export(dialog -> {
            desk.choose(dialog, "A4");
            desk.untilSaid(dialog, "does not fit on A4");
            assertFalse(desk.finish(dialog).isEnabled());
            dialog.close();
        });
        assertEquals(0, folder.toFile().list((where, name) -> name.endsWith(".pdf")).length);
    }
}
