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
import pitchstack.model.Positioner;
import pitchstack.model.StageSource;
import pitchstack.model.file.StackFile;

/** File > Export Parts. */
class ExportPartsTest {
    @TempDir
    private Path folder;
    private Bench bench;
    private ExportDesk desk;

    @BeforeEach
    void open() throws IOException {
        bench = new Bench(folder);
        desk = new ExportDesk(bench, "Export Parts", "pitchstack.ui.views.exportParts");
        String example = FileLocator.toFileURL(
                Platform.getBundle("pitchstack.help").getEntry("examples/cross-cut-fence.pitchstack")).getPath();
        bench.open("fence", StackFile.load(new File(example).toPath()).positioner());
    }

    @AfterEach
    void close() {
        bench.clear();
    }

    private byte[] byCommand(String ending, String... which) throws IOException {
        return byCommandOf("fence", ending, which);
    }

    private byte[] byCommandOf(String stack, String ending, String... which) throws IOException {
        Path out = folder.resolve("by-command." + ending);
        StringWriter errors = new StringWriter();
        Main.run(Stream.concat(Stream.of("part", folder.resolve(stack + ".pitchstack").toString(), "--out", out.toString()),
                Stream.of(which)).toArray(String[]::new), new PrintWriter(new StringWriter()), new PrintWriter(errors));
        assertEquals("", errors.toString());
        return Files.readAllBytes(out);
    }

    @Test
    void writesThePlateThatTheCommandLineWrites() throws IOException {
        desk.export(dialog -> {
            desk.choose(dialog, "3MF, for printers");
            desk.untilSaid(dialog, " mm on the bed, ");
            assertTrue(desk.said(dialog, "a positioning aid, never a guard"));
            desk.picture(dialog, "export-parts");
            desk.finishOnceReady(dialog);
        });
        assertArrayEquals(byCommand("3mf", "--set"), Files.readAllBytes(folder.resolve("fence-parts.3mf")));
    }

    @Test
    void namesAStackWithoutATitleByItsFileAsTheCommandLineDoes() throws IOException {
        Positioner untitled = Stacks.millimetres();
        untitled.setTitle("");
        bench.open("my bench", untitled);
        for (String[] format : new String[][] {{"3MF, for printers", "3mf"}, {"STL, without unit and names", "stl"}}) {
            desk.export(dialog -> {
                desk.choose(dialog, format[0]);
                desk.finishOnceReady(dialog);
            });
            assertArrayEquals(byCommandOf("my bench", format[1], "--set"),
                    Files.readAllBytes(folder.resolve("my bench-parts." + format[1])));
        }
    }

    @Test
    void writesOneStageAsASideViewAndOffersThatAgain() throws IOException {
        desk.export(dialog -> {
            desk.choose(dialog, "Fine row");
            desk.choose(dialog, "DXF, the side view for mills");
            desk.finishOnceReady(dialog);
        });
        assertArrayEquals(byCommand("dxf", "--stage", "Fine row"), Files.readAllBytes(folder.resolve("fence-parts.dxf")));
        desk.export(dialog -> {
            desk.untilSaid(dialog, "fence-parts.dxf exists already");
            desk.choose(dialog, "3MF, for printers");
        });
    }

    @Test
    void leavesAFileThatIsThereUnlessTicked() throws IOException {
        Path there = folder.resolve("fence-parts.csv");
        Files.writeString(there, "mine");
        desk.export(dialog -> {
            desk.choose(dialog, "Coupon to calibrate the printer");
            desk.choose(dialog, "CSV, what to measure on it");
            desk.untilSaid(dialog, "fence-parts.csv exists already");
            // Two arms of 100 mm and a post of 6 mm, with posts of 6 mm across.
            desk.untilSaid(dialog, "112.0 × 112.0 × 6.0 mm on the bed");
            assertFalse(desk.finish(dialog).isEnabled());
            desk.picture(dialog, "export-coupon");
        });
        assertEquals("mine", Files.readString(there));
        desk.export(dialog -> {
            desk.choose(dialog, "Coupon to calibrate the printer");
            desk.choose(dialog, "CSV, what to measure on it");
            desk.press(dialog, "Replace a file that is there");
            desk.finishOnceReady(dialog);
        });
        assertArrayEquals(byCommand("csv", "--coupon"), Files.readAllBytes(there));
    }

    @Test
    void saysThatNothingIsPrinted() {
        Positioner bought = Stacks.millimetres();
        bought.getAxes().get(0).getStages().forEach(stage -> stage.setSource(StageSource.BOUGHT));
        bench.open("bought", bought);
        desk.export(dialog -> {
            desk.untilSaid(dialog, "No row is printed");
            assertFalse(desk.finish(dialog).isEnabled());
        });
    }

    @Test
    void isOfferedWhileAStackIsOpen() {
        assertTrue(desk.isOffered());
        bench.clear();
        assertFalse(desk.isOffered());
    }
}
