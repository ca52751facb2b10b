// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.ui.editor.pictures.PrintedPage;

/**
 * The drawing on the clipboard and on paper, and files dragged in. Run in a window of their own: after them, keys that
 * other tests post no longer arrive on a screen without a window manager.
 */
class OutsideChecks {
    private static final int FEW_COLOURS = 20;
    private static final int WIDTH = 160;
    private static final int HEIGHT = 40;

    @TempDir
    private Path folder;

    @AfterEach
    void close() {
        Desk.closeAll();
    }

    private Path file(String name) throws IOException {
        return Stacks.save(Stacks.pair(), folder.resolve(name));
    }

    @Test
    void putsTheDrawingOnTheClipboardInTwiceThePixels() throws IOException {
        Desk.open(file("fence.pitchstack"));
        Rectangle seen = Desk.canvas().getClientArea();
        Keyboard.press("ctrl+shift+c");
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        ImageData picture = (ImageData) clipboard.getContents(ImageTransfer.getInstance());
        clipboard.dispose();
        assertEquals(new Point(2 * seen.width, 2 * seen.height), new Point(picture.width, picture.height));
        Set<Integer> colours = new HashSet<>();
        for (int x = 0; x < picture.width; x += 3) {
            for (int y = 0; y < picture.height; y += 3) {
                colours.add(picture.getPixel(x, y));
            }
        }
        assertTrue(colours.size() > FEW_COLOURS, "something is drawn: " + colours.size() + " colours");
    }

    /** On a computer without any printer a sentence says so, and names another way. The choice of what to print is there. */
    @Test
    void showsThePageBeforeItIsPrinted() throws IOException {
        Desk.open(file("fence.pitchstack"));
        String said = Answers.dialog("Print", SWT.ESC, () -> Desk.command("org.eclipse.ui.file.print"));
        assertTrue(said.matches(Printer.getPrinterList().length > 0 ? ".*the drawing will be \\d+ mm wide.*"
                : ".*No printer is set up.*copy the drawing as a picture.*"), said);
    }

    /** Printed into the file that is named. */
    @Test
    void printsOnePage() throws IOException {
        PrinterData printer = Stream.of(Printer.getPrinterList()).filter(data -> data.driver.contains("File")).findFirst()
                .orElseThrow(() -> new AssertionError("the window system cannot print into a file"));
        Path paper = folder.resolve("paper.pdf");
        printer.printToFile = true;
        printer.fileName = paper.toString();
        new PrintedPage(new ImageData(400, 200, 24, new PaletteData(0xff0000, 0xff00, 0xff)), "test")
                .print(printer);
        Desk.until("the page is written", () -> sizeOf(paper) > 500);
        String text = Files.readString(paper, StandardCharsets.ISO_8859_1);
        assertTrue(text.startsWith("%PDF"), "a page description");
        assertTrue(text.contains("/Subtype /Image"), "with the drawing on it");
    }

    private static long sizeOf(Path file) {
        try {
            return Files.size(file);
        } catch (IOException e) {
            return 0;
        }
    }

    @Test
    void opensAFileThatIsDraggedIntoTheWindow() throws IOException {
        Path file = file("dragged.pitchstack");
        Rectangle window = Desk.shell().getBounds();
        Point corner = new Point(window.x + 20, window.y + window.height - 60);
        Process outside = outside(file, corner);
        try {
            assertEquals("ready", outside.inputReader().readLine());
            Desk.settle();
            Keyboard.dragOnScreen(new Point(corner.x + WIDTH / 2, corner.y + HEIGHT / 2),
                    new Point(window.x + window.width / 2, window.y + window.height / 3));
            Desk.until("the file is open", () -> Desk.page().getActiveEditor() != null);
            assertEquals("dragged.pitchstack", Desk.page().getActiveEditor().getTitle());
            assertTrue(Files.exists(file), "it stays where it is");
        } finally {
            outside.destroy();
            Keyboard.rest();
        }
        assertEquals(List.of("dragged.pitchstack"),
                Stream.of(Desk.page().getEditorReferences()).map(reference -> reference.getTitle()).toList());
    }

    /** In a program of its own, so that this one keeps the keyboard. */
    private static Process outside(Path file, Point corner) throws IOException {
        String path = Stream.of(FileOutside.class, Display.class)
                .map(known -> known.getProtectionDomain().getCodeSource().getLocation().getPath())
                .flatMap(place -> Stream.of(place, place + "/target/classes")).collect(Collectors.joining(File.pathSeparator));
        return new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp", path,
                FileOutside.class.getName(), file.toString(), String.valueOf(corner.x), String.valueOf(corner.y),
                String.valueOf(WIDTH), String.valueOf(HEIGHT)).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    }
}
