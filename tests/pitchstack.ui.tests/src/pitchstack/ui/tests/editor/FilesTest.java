// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.IEditorPart;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.MoveStage;
import pitchstack.edit.Session;
import pitchstack.model.file.StackFile;

/** Opening and saving. */
class FilesTest {
    private static final String SAVE = "org.eclipse.ui.file.save";

    @TempDir
    private Path folder;

    @AfterEach
    void close() {
        Desk.closeAll();
    }

    private Path file(String name) throws IOException {
        return Stacks.save(Stacks.pair(), folder.resolve(name));
    }

    private static void move(IEditorPart editor, int index) {
        Session session = editor.getAdapter(Session.class);
        session.run(new MoveStage(session.axis().getStages().get(0), index));
        Desk.settle();
    }

    @Test
    void savesWhatWasChangedAndIsCleanAgain() throws IOException {
        Path file = file("fence.pitchstack");
        IEditorPart editor = Desk.open(file);
        assertEquals("fence.pitchstack", editor.getTitle());
        assertEquals(file.toRealPath().toString(), editor.getTitleToolTip());
        assertFalse(editor.isDirty());
        move(editor, 12);
        assertTrue(editor.isDirty());
        Desk.command(SAVE);
        assertFalse(editor.isDirty());
        assertEquals(12, StackFile.load(file).positioner().getAxes().get(0).getStages().get(0).getIndex());
        Desk.command("org.eclipse.ui.edit.undo");
        assertTrue(editor.isDirty(), "undone beyond what was saved");
        Desk.command("org.eclipse.ui.edit.redo");
        assertFalse(editor.isDirty());
    }

    @Test
    void opensAFileOnceByWhateverName() throws IOException {
        Path file = file("fence.pitchstack");
        Path link = Files.createSymbolicLink(folder.resolve("link.pitchstack"), file);
        IEditorPart first = Desk.open(file);
        IEditorPart other = Desk.open(file("other.pitchstack"));
        assertNotSame(first, other);
        assertSame(first, Desk.open(folder.resolve("..").resolve(folder.getFileName()).resolve("fence.pitchstack")));
        assertSame(other, Desk.open(folder.resolve("other.pitchstack")));
        assertSame(first, Desk.open(link));
        assertEquals(2, Desk.page().getEditorReferences().length);
    }

    @Test
    void opensACopyOfAnExampleThatLeavesTheExampleAlone() throws IOException {
        Path example = file("example.pitchstack");
        byte[] before = Files.readAllBytes(example);
        Desk.command("pitchstack.ui.editor.openCopy", Map.of("path", example.toString()));
        IEditorPart copy = Desk.page().getActiveEditor();
        assertEquals("example.pitchstack", copy.getTitle());
        assertFalse(copy.isDirty());
        move(copy, 5);
        Path saved = folder.resolve("mine.pitchstack");
        FileChooser.answer(saved, () -> Desk.command(SAVE));
        assertFalse(copy.isDirty());
        assertEquals("mine.pitchstack", copy.getTitle());
        assertEquals(5, StackFile.load(saved).positioner().getAxes().get(0).getStages().get(0).getIndex());
        assertArrayEquals(before, Files.readAllBytes(example));
        assertSame(copy, Desk.open(saved), "it is this file's editor now");
    }

    @Test
    void asksInPlainWordsBeforeChangesAreLost() throws IOException {
        IEditorPart editor = Desk.open(file("stack.pitchstack"));
        move(editor, 3);
        String said = Answers.dialog("Save Changes", SWT.ESC, () -> Desk.page().closeEditor(editor, true));
        assertTrue(said.contains("stack.pitchstack"), said);
        assertFalse(said.toLowerCase(Locale.ROOT).contains("resource"), said);
        assertTrue(editor.isDirty(), "closing the question keeps the file open");
        said = Answers.dialog("Reset Layout", SWT.ESC, () -> Desk.menuItem("Window", "Reset Layout").notifyListeners(
                SWT.Selection, new Event()));
        assertFalse(said.toLowerCase(Locale.ROOT).contains("perspective"), said);
    }

    @Test
    void startsANewPositionerThatIsSavedUnderANameThatIsAskedFor() throws IOException {
        Desk.command("pitchstack.ui.editor.new");
        IEditorPart first = Desk.page().getActiveEditor();
        Desk.command("pitchstack.ui.editor.new");
        assertNotSame(first, Desk.page().getActiveEditor());
        IEditorPart editor = Desk.page().getActiveEditor();
        Path saved = folder.resolve("new.pitchstack");
        FileChooser.answer(saved, editor::doSaveAs);
        assertEquals("new.pitchstack", editor.getTitle());
        assertEquals("New positioner", StackFile.load(saved).positioner().getTitle());
    }

    @Test
    void listsRecentFilesNewestFirstAndSaysWhenOneIsGone() throws IOException {
        Path one = file("one.pitchstack");
        Desk.open(one);
        Desk.open(file("two.pitchstack"));
        Desk.closeAll();
        MenuItem recent = Desk.menuItem("File", "Recent Files");
        assertTrue(Desk.entry(recent.getMenu(), "1 ").getText().contains("two.pitchstack"));
        MenuItem second = Desk.entry(recent.getMenu(), "2 ");
        assertTrue(second.getText().contains("one.pitchstack"));
        Files.delete(one);
        String said = Answers.dialog("The file was not opened", SWT.CR, () -> {
            second.notifyListeners(SWT.Selection, new Event());
            Desk.settle();
        });
        assertTrue(said.contains("one.pitchstack"), said);
        assertEquals(0, Desk.page().getEditorReferences().length);
    }

    @Test
    void asksBeforeOverwritingWhatAnotherProgramChanged() throws IOException {
        Path file = file("fence.pitchstack");
        IEditorPart editor = Desk.open(file);
        move(editor, 12);
        var other = StackFile.load(file);
        other.positioner().setTitle("changed elsewhere");
        StackFile.save(other.positioner(), file);
        String said = Answers.dialog("The file has changed", SWT.ESC, () -> Desk.command(SAVE));
        assertTrue(said.contains("another program"), said);
        assertTrue(editor.isDirty());
        assertEquals("changed elsewhere", StackFile.load(file).positioner().getTitle());
        Answers.dialog("The file has changed", SWT.CR, () -> Desk.command(SAVE));
        assertFalse(editor.isDirty());
        assertEquals("New positioner", StackFile.load(file).positioner().getTitle());
    }

    @Test
    void saysInOneSentenceWhatIsWrongWithAFile() throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.pitchstack"), "<?xml version=\"1.0\"?><something/>");
        String said = Answers.dialog("The file was not opened", SWT.CR,
                () -> Desk.command("pitchstack.ui.editor.openFile", Map.of("path", broken.toString())));
        assertTrue(said.contains("broken.pitchstack"), said);
        assertEquals(0, Desk.page().getEditorReferences().length);
    }
}
