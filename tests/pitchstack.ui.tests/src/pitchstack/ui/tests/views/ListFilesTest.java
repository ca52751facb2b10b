// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.Session;
import pitchstack.model.Target;
import pitchstack.ui.tests.editor.FileChooser;

/** The dialogs of the Target list that read and write files, with names typed into the system's own dialogs. */
class ListFilesTest {
    private final Hands hands = new Hands();
    @TempDir
    private Path folder;
    private Bench bench;
    private Session session;

    @BeforeEach
    void open() {
        bench = new Bench(folder);
        session = bench.open("List", Stacks.millimetres());
        bench.view("pitchstack.ui.views.list");
        hands.until("the list is planned", () -> says("Effort of all moves"));
    }

    @AfterEach
    void close() {
        bench.clear();
        bench.view("pitchstack.ui.views.target");
    }

    private boolean says(String part) {
        return !hands.all(bench.shell(), Label.class, l -> l.isVisible() && l.getText().contains(part)).isEmpty();
    }

    private void tool(String text) {
        ToolItem item = hands.all(bench.shell(), ToolBar.class, ToolBar::isVisible).stream()
                .flatMap(bar -> Arrays.stream(bar.getItems())).filter(i -> i.getText().equals(text)).findFirst().orElseThrow();
        item.notifyListeners(SWT.Selection, new Event());
    }

    /** Names a file in one dialog, and answers the dialog of this program that follows. */
    private String chosen(String tool, String dialog, Path file, String next, Consumer<Shell> answer) throws IOException {
        String[] said = new String[1];
        Modal following = new Modal(hands);
        following.expect(next, shell -> {
            said[0] = String.join(" ", hands.all(shell, Label.class, l -> true).stream().map(Label::getText).toList());
            answer.accept(shell);
        });
        if (tool.startsWith("Import")) {
            FileChooser.open(dialog, file, () -> tool(tool));
        } else {
            FileChooser.answer(dialog, file, () -> tool(tool));
        }
        following.check(next);
        return said[0];
    }

    private void press(Shell dialog, String text) {
        hands.the(dialog, Button.class, b -> b.getText().replace("&", "").equals(text))
                .notifyListeners(SWT.Selection, new Event());
    }

    private List<String> positions() {
        return session.axis().getTargets().stream().map(Target::getPosition).toList();
    }

    @Test
    void importsTheTargetsOfAFileAsOneChange() throws IOException {
        Path file = Files.writeString(folder.resolve("stops.csv"), "name,position,tolerance\nThird,30,0.01\nFourth,1.5 in,\n");
        FileChooser.open("Import Targets", file, () -> tool("Import…"));
        hands.until("they are in the list", () -> positions().size() == 4);
        assertEquals(List.of("10.1 mm", "24.9 mm"), positions().subList(0, 2));
        assertEquals("Fourth", session.axis().getTargets().get(3).getName());
        session.history().undo();
        assertEquals(List.of("10.1 mm", "24.9 mm"), positions());
    }

    @Test
    void namesTheRowsOfAFileThatCannotBeRead() throws IOException {
        Path file = Files.writeString(folder.resolve("stops.csv"), "name,position\nGood,30\nBad,thirty\n");
        String said = chosen("Import…", "Import Targets", file, "Import Targets", shell -> press(shell, "OK"));
        assertTrue(said.contains("1 target was added") && said.contains("Line 3") && said.contains("thirty"), said);
        assertEquals(3, positions().size());
    }

    @Test
    void asksBeforeItReplacesAFileAndKeepsTheOldOne() throws IOException {
        Path file = Files.writeString(folder.resolve("plan.csv"), "mine\n");
        String said = chosen("Export…", "Export Plan", file, "The file exists", shell -> press(shell, "No"));
        assertTrue(said.contains("plan.csv exists already. Replace it?") && said.contains("plan.csv.bak~"), said);
        assertEquals("mine\n", Files.readString(file));
        chosen("Export…", "Export Plan", file, "The file exists", shell -> press(shell, "Yes"));
        assertTrue(Files.readString(file).startsWith("stop,name,target (mm)"), Files.readString(file));
        assertEquals("mine\n", Files.readString(folder.resolve("plan.csv.bak~")));
    }

    @Test
    void saysWhyAFileIsNoList() throws IOException {
        Path file = folder.resolve("stops.csv");
        Files.write(file, new byte[] {'p', 'o', 's', '\n', (byte) 0xE9, '\n'});
        String said = chosen("Import…", "Import Targets", file, "Import Targets", shell -> press(shell, "OK"));
        assertTrue(said.contains("stops.csv is not text in UTF-8"), said);
        assertEquals(2, positions().size());
    }
}
