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
import java.util.Map;
import java.util.function.Consumer;
import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.model.file.StackFile;

/** File > Export Drawing. */
class ExportDrawingTest {
    private final Hands hands = new Hands();
    @TempDir
    private Path folder;
    private Bench bench;

    @BeforeEach
    void open() throws IOException {
        bench = new Bench(folder);
        String example = FileLocator.toFileURL(
                Platform.getBundle("pitchstack.help").getEntry("examples/cross-cut-fence.pitchstack")).getPath();
        bench.open("fence", StackFile.load(new File(example).toPath()).positioner());
    }

    @AfterEach
    void close() {
        bench.clear();
    }

    private void export(Consumer<Shell> fill) {
        new Modal(hands).during("Export Drawing", () -> bench.command("pitchstack.ui.views.exportDrawing", Map.of()), fill);
        hands.settle();
    }

    private void choose(Shell dialog, String item) {
        Combo combo = hands.the(dialog, Combo.class, c -> c.indexOf(item) >= 0);
        combo.select(combo.indexOf(item));
        combo.notifyListeners(SWT.Selection, new Event());
    }

    private Button finish(Shell dialog) {
        return hands.the(dialog, Button.class, b -> b.getText().replace("&", "").equals("Finish"));
    }

    private void finishOnceDrawn(Shell dialog) {
        hands.until("the drawing is ready", () -> finish(dialog).isEnabled());
        hands.focus(finish(dialog));
        hands.chord(0, ' ');
    }

    private boolean said(Shell dialog, String part) {
        return hands.all(dialog, Text.class, t -> t.getText().contains(part)).size()
                + hands.all(dialog, Label.class, l -> l.getText().contains(part)).size() > 0;
    }

    @Test
    void writesTheSheetThatIsShownAndKeepsTheChoices() throws IOException {
        export(dialog -> {
            choose(dialog, "SVG, for the screen");
            choose(dialog, "A2");
            hands.until("the size is told", () -> said(dialog, "One sheet A2, "));
            hands.picture(dialog, "export-drawing");
            finishOnceDrawn(dialog);
        });
        Path written = folder.resolve("fence.svg");
        assertTrue(Files.readString(written).contains("width=\"594mm\""), "A2 lies 594 mm wide (ISO 216)");
        export(dialog -> {
            hands.until("the last choices are drawn", () -> said(dialog, "One sheet A2, "));
            assertFalse(finish(dialog).isEnabled(), "the file is there already");
            assertTrue(said(dialog, "fence.svg exists already"));
            choose(dialog, "PDF, for paper");
            choose(dialog, "Smallest that fits");
            finishOnceDrawn(dialog);
        });
        assertTrue(Files.readString(folder.resolve("fence.pdf"), StandardCharsets.ISO_8859_1).startsWith("%PDF-"));
    }

    @Test
    void saysWhichSheetIsLargeEnough() {
        export(dialog -> {
            choose(dialog, "A4");
            hands.until("it is refused", () -> said(dialog, "does not fit on A4"));
            assertFalse(finish(dialog).isEnabled());
            dialog.close();
        });
        assertEquals(0, folder.toFile().list((where, name) -> name.endsWith(".pdf")).length);
    }
}
