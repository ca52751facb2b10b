// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.Platform;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.cli.Main;
import pitchstack.model.Axis;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.Target;
import pitchstack.model.file.StackFile;

/** File > Export Setting Card. */
class ExportCardTest {
    @TempDir
    private Path folder;
    private Bench bench;
    private ExportDesk desk;

    @BeforeEach
    void prepare() {
        bench = new Bench(folder);
        desk = new ExportDesk(bench, "Export Setting Card", "pitchstack.ui.views.exportCard");
    }

    @AfterEach
    void close() {
        bench.clear();
    }

    private static Positioner fence() throws IOException {
        String example = FileLocator.toFileURL(
                Platform.getBundle("pitchstack.help").getEntry("examples/cross-cut-fence.pitchstack")).getPath();
        return StackFile.load(new File(example).toPath()).positioner();
    }

    /** What the command line writes for the same file; its date is that of the file's title block. */
    private byte[] byCommand(String ending, String... more) throws IOException {
        Path out = folder.resolve("by-command." + ending);
        StringWriter errors = new StringWriter();
        Main.run(Stream.concat(Stream.of("card", folder.resolve("fence.pitchstack").toString(), "--out", out.toString()),
                Stream.of(more)).toArray(String[]::new), new PrintWriter(new StringWriter()), new PrintWriter(errors));
        assertEquals("", errors.toString());
        return Files.readAllBytes(out);
    }

    @Test
    void writesWhatTheCommandLineWritesAndKeepsTheChoices() throws IOException {
        bench.open("fence", fence());
        desk.export(dialog -> {
            desk.choose(dialog, "PDF, for paper");
            desk.choose(dialog, "Cheapest in this order");
            desk.choose(dialog, "Avoid worn teeth");
            desk.untilSaid(dialog, " of A4, ");
            assertTrue(desk.said(dialog, "Left out: "), "the fence has a target between two steps");
            desk.picture(dialog, "export-card");
            desk.finishOnceReady(dialog);
        });
        assertArrayEquals(byCommand("pdf"), Files.readAllBytes(folder.resolve("fence-card.pdf")));
        desk.export(dialog -> {
            desk.choose(dialog, "XLSX, a workbook");
            desk.choose(dialog, "Cheapest in any order");
            desk.choose(dialog, "Never use worn teeth");
            desk.finishOnceReady(dialog);
        });
        assertArrayEquals(byCommand("xlsx", "--order", "free", "--worn", "never"),
                Files.readAllBytes(folder.resolve("fence-card.xlsx")));
        desk.export(dialog -> assertTrue(desk.said(dialog, "fence-card.xlsx"), "the last format is there again"));
    }

    @Test
    void leavesAFileThatIsThereUnlessTicked() throws IOException {
        bench.open("fence", fence());
        Path there = folder.resolve("fence-card.csv");
        Files.writeString(there, "mine");
        desk.export(dialog -> {
            desk.choose(dialog, "CSV, the targets alone");
            desk.untilSaid(dialog, "fence-card.csv exists already");
            desk.untilSaid(dialog, " kB");
            assertFalse(desk.finish(dialog).isEnabled());
        });
        assertEquals("mine", Files.readString(there));
        desk.export(dialog -> {
            desk.choose(dialog, "CSV, the targets alone");
            desk.choose(dialog, "One after another");
            desk.choose(dialog, "Allow worn teeth");
            desk.press(dialog, "Replace a file that is there");
            desk.finishOnceReady(dialog);
        });
        assertArrayEquals(byCommand("csv", "--order", "one-by-one", "--worn", "allow"), Files.readAllBytes(there));
    }

    @Test
    void saysThatThereAreNoTargets() throws IOException {
        Positioner bare = fence();
        bare.getAxes().get(0).getTargets().clear();
        bench.open("fence", bare);
        desk.export(dialog -> {
            desk.untilSaid(dialog, "Axis “Fence” has no targets yet");
            assertFalse(desk.finish(dialog).isEnabled());
        });
    }

    /** Forty targets with hundreds of settings each take seconds in a free order. */
    @Test
    void stopsALongPlanningAndGoesOnWhenAsked() {
        Positioner many = Stacks.millimetres();
        Axis axis = many.getAxes().get(0);
        axis.getTargets().clear();
        for (int i = 0; i < 40; i++) {
            Target target = PitchstackFactory.eINSTANCE.createTarget();
            target.setPosition(i * 7919 % 400 + " mm");
            target.setTolerance("8 mm");
            axis.getTargets().add(target);
        }
        bench.open("many", many);
        desk.export(dialog -> {
            desk.choose(dialog, "Cheapest in any order");
            desk.press(dialog, "Stop");
            desk.untilSaid(dialog, "This was stopped; make another choice to begin again.");
            assertFalse(desk.finish(dialog).isEnabled());
            desk.choose(dialog, "One after another");
            desk.untilSaid(dialog, "40 targets");
        });
    }

    @Test
    void isOfferedWhileAStackIsOpen() throws IOException {
        assertFalse(desk.isOffered());
        bench.open("fence", fence());
        assertTrue(desk.isOffered());
    }
}
