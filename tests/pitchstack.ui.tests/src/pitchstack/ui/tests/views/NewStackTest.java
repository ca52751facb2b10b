// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
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
import pitchstack.edit.Session;
import pitchstack.model.AxisKind;
import pitchstack.model.file.StackFile;

/** File > Design a New Stack, by keyboard. */
class NewStackTest {
    private final Hands hands = new Hands();
    @TempDir
    private Path folder;
    private Bench bench;

    @BeforeEach
    void open() {
        bench = new Bench(folder);
    }

    @AfterEach
    void close() {
        bench.clear();
    }

    private void design(Consumer<Shell> fill) {
        new Modal(hands).during("Design a New Stack", () -> bench.command("pitchstack.ui.views.design", Map.of()), fill);
        hands.settle();
    }

    /** A text field after the label with a text. */
    private Text field(Shell dialog, String label) {
        Label before = hands.the(dialog, Label.class, l -> l.getText().replace("&", "").equals(label));
        var all = List.of(before.getParent().getChildren());
        return (Text) all.get(all.indexOf(before) + 1);
    }

    private void type(Shell dialog, String label, String text) {
        Text field = field(dialog, label);
        hands.focus(field);
        hands.chord(SWT.CTRL, 'a');
        hands.key(0, SWT.DEL);
        hands.type(text);
        hands.until("it is typed", () -> text.equals(field.getText()));
    }

    private void choose(Shell dialog, String part) {
        for (Combo combo : hands.all(dialog, Combo.class, c -> c.isVisible())) {
            for (int i = 0; i < combo.getItemCount(); i++) {
                if (combo.getItem(i).contains(part)) {
                    hands.focus(combo);
                    combo.select(i);
                    combo.notifyListeners(SWT.Selection, new Event());
                    hands.settle();
                    return;
                }
            }
        }
        throw new AssertionError("no choice " + part);
    }

    private Button button(Shell dialog, String text) {
        return hands.the(dialog, Button.class, b -> b.getText().replace("&", "").startsWith(text));
    }

    private void press(Shell dialog, String text) {
        hands.focus(button(dialog, text));
        hands.chord(0, ' ');
    }

    private static Text summary(Shell dialog, Hands hands) {
        return hands.the(dialog, Text.class, t -> (t.getStyle() & SWT.WRAP) != 0 && (t.getStyle() & SWT.BORDER) != 0);
    }

    @Test
    void buildsTheFenceFromWhatAToolmakerKnowsAndOpensIt() throws IOException {
        design(dialog -> {
            choose(dialog, "inches");
            type(dialog, "Travel", "96");
            type(dialog, "Finest step", "0.010");
            choose(dialog, "circular pitch");
            type(dialog, "Its pitch", "1/4 in");
            hands.until("a unit is taken as it is typed", () -> hands.the(dialog, Button.class,
                    b -> b.getText().replace("&", "").startsWith("Next")).isEnabled());
            type(dialog, "Its pitch", "1/4");
            hands.picture(dialog, "design-wishes");
            press(dialog, "Next");
            hands.until("the stack is worked out", () -> summary(dialog, hands).getText().contains("0.24 in"));
            type(dialog, "Folder", folder.toString());
            type(dialog, "File name", "fence");
            hands.picture(dialog, "design-result");
            press(dialog, "Finish");
        });
        Path file = folder.resolve("fence.pitchstack");
        Session session = bench.editor().getAdapter(Session.class);
        assertEquals("fence.pitchstack", bench.editor().getTitle());
        assertFalse(bench.editor().isDirty());
        assertEquals("0.24 in", StackFile.load(file).positioner().getAxes().get(0).getStages().get(1).getPitch());
        assertFalse(session.analysis().hasErrors());
        try (var left = Files.list(folder)) {
            assertEquals(1, left.count(), "nothing else is left beside the file");
        }
    }

    @Test
    void remembersTheFolderAndSaysIntoHowManyPiecesALongRowFalls() {
        design(dialog -> {
            type(dialog, "Travel", "600");
            type(dialog, "Finest step", "0.01");
            press(dialog, "Next");
            hands.until("it is worked out", () -> summary(dialog, hands).getText().contains("finest step everywhere"));
            String said = summary(dialog, hands).getText();
            assertTrue(said.contains("a printer's bed of 220 mm"), said);
            type(dialog, "Folder", folder.toString());
            type(dialog, "File name", "long");
            press(dialog, "Finish");
        });
        assertEquals("Carriage", bench.editor().getAdapter(Session.class).axis().getName());
        design(dialog -> {
            type(dialog, "Travel", "600");
            type(dialog, "Finest step", "0.1");
            press(dialog, "Next");
            hands.until("it is worked out", () -> summary(dialog, hands).getText().contains("finest step everywhere"));
            assertEquals(folder.toString(), field(dialog, "Folder").getText());
            press(dialog, "Cancel");
        });
    }

    @Test
    void explainsEachFieldAsItIsTypedAndGoesOnOnlyWhenAllAreRight() {
        design(dialog -> {
            assertFalse(button(dialog, "Next").isEnabled(), "nothing is known yet");
            type(dialog, "Travel", "600,5");
            assertTrue(said(dialog, "with a point and not a comma"));
            type(dialog, "Travel", "600");
            assertTrue(said(dialog, "finest step is missing"));
            type(dialog, "Finest step", "700");
            assertTrue(said(dialog, "must be shorter"));
            type(dialog, "Finest step", "0.1");
            assertTrue(button(dialog, "Next").isEnabled());
            choose(dialog, "module");
            assertTrue(said(dialog, "pitch of the rack is missing"));
            assertFalse(button(dialog, "Next").isEnabled());
            type(dialog, "Its pitch", "1");
            assertTrue(button(dialog, "Next").isEnabled());
            type(dialog, "Printed line width", "0");
            assertTrue(said(dialog, "must be above 0"));
        });
        assertEquals(0, bench.page().getEditorReferences().length, "closing it makes nothing");
    }

    private boolean said(Shell dialog, String part) {
        return !hands.all(dialog, Text.class, t -> t.isVisible() && t.getText().contains(part)).isEmpty()
                || !hands.all(dialog, Label.class, l -> l.isVisible() && l.getText().contains(part)).isEmpty();
    }

    @Test
    void saysWhatToAskForWhereTheStepIsTooFineAndThatAFileExists() throws IOException {
        Files.writeString(folder.resolve("taken.pitchstack"), "");
        design(dialog -> {
            type(dialog, "Travel", "600");
            type(dialog, "Finest step", "0.0001");
            press(dialog, "Next");
            hands.until("the reason is there", () -> summary(dialog, hands).getText().contains("or more"));
            assertEquals(List.of(summary(dialog, hands)), hands.all(dialog, Text.class,
                    t -> t.isVisible() && t.getText().contains("is finer than")), "once is enough");
            assertFalse(button(dialog, "Finish").isEnabled());
            press(dialog, "< Back");
            type(dialog, "Finest step", "0.1");
            press(dialog, "Next");
            hands.until("the stack is worked out", () -> summary(dialog, hands).getText().contains("finest step everywhere"));
            hands.focus(field(dialog, "Folder"));
            hands.chord(SWT.CTRL, 'a');
            hands.key(0, SWT.DEL);
            assertTrue(said(dialog, "folder is missing"));
            type(dialog, "Folder", folder.resolve("nowhere").toString());
            assertTrue(said(dialog, "There is no folder"));
            type(dialog, "Folder", folder.toString());
            type(dialog, "File name", "taken");
            assertTrue(said(dialog, "exists already"));
            assertFalse(button(dialog, "Finish").isEnabled());
        });
        assertEquals(0, Files.size(folder.resolve("taken.pitchstack")));
    }

    @Test
    void buildsATableOfRings() {
        design(dialog -> {
            Button centre = button(dialog, "around a centre");
            hands.focus(centre);
            hands.chord(0, ' ');
            hands.until("it turns", centre::getSelection);
            type(dialog, "Travel", "360");
            type(dialog, "Finest step", "0.1");
            choose(dialog, "teeth in the whole ring");
            type(dialog, "Its pitch", "360");
            press(dialog, "Next");
            hands.until("the stack is worked out", () -> summary(dialog, hands).getText().contains("400 per turn"));
            type(dialog, "Folder", folder.toString());
            type(dialog, "File name", "table");
            press(dialog, "Finish");
        });
        assertEquals(AxisKind.ROTARY, bench.editor().getAdapter(Session.class).axis().getKind());
    }
}
