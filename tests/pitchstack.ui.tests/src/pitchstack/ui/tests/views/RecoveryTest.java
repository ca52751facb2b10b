// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Year;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.service.prefs.BackingStoreException;
import pitchstack.edit.MoveStage;
import pitchstack.edit.Session;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFile;
import pitchstack.ui.views.recovery.Owner;
import pitchstack.ui.views.recovery.Recovery;
import pitchstack.ui.views.recovery.UnsavedCopies;

/** Unsaved work, and what a program that was killed leaves of it. */
class RecoveryTest {
    private static final String TITLE = "Unsaved work was found";

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
        assertEquals(0, listed(), "nothing is left over");
    }

    private static int listed() {
        try {
            return InstanceScope.INSTANCE.getNode("pitchstack.unsaved").keys().length;
        } catch (BackingStoreException e) {
            throw new AssertionError(e);
        }
    }

    private Path file() throws IOException {
        return folder.toRealPath().resolve("fence.pitchstack");
    }

    private Path copy() throws IOException {
        return UnsavedCopies.beside(file(), Owner.self());
    }

    /** Where a program kept a file's work that runs no more: one of this program's number, begun at another time. */
    private static Path left(Path file) {
        return UnsavedCopies.beside(file, new Owner(Owner.self().process(), 1));
    }

    private Session changed() throws IOException {
        Session session = bench.open("fence", Stacks.millimetres());
        session.run(new MoveStage(session.axis().getStages().get(0), 12));
        Path copy = copy();
        hands.until("the work is kept", () -> Files.exists(copy));
        return session;
    }

    @Test
    void keepsWorkBesideTheFileUntilItIsSaved() throws IOException {
        Session session = changed();
        assertEquals(12, StackFile.load(copy()).positioner().getAxes().get(0).getStages().get(0).getIndex());
        assertEquals(0, StackFile.load(file()).positioner().getAxes().get(0).getStages().get(0).getIndex(),
                "the file itself is untouched");
        bench.command("org.eclipse.ui.file.save", Map.of());
        Path copy = copy();
        hands.until("the copy is gone", () -> Files.notExists(copy));
        assertFalse(session.isDirty());
        assertEquals(0, listed());
    }

    @Test
    void dropsWorkThatIsUndoneOrClosedWithoutSaving() throws IOException {
        Session session = changed();
        Path copy = copy();
        session.history().undo();
        hands.until("the copy is gone", () -> Files.notExists(copy));
        session.history().redo();
        hands.until("the work is kept again", () -> Files.exists(copy));
        bench.clear();
        assertTrue(Files.notExists(copy));
    }

    /** Leaves the copy as a killed program does. */
    private Positioner killed() throws IOException {
        Session session = changed();
        Positioner work = EcoreUtil.copy(session.positioner());
        byte[] kept = Files.readAllBytes(copy());
        bench.clear();
        Files.write(left(file()), kept);
        return work;
    }

    /** Opens the file again and does something in the dialog that comes up then. */
    private Session reopen(Consumer<Shell> fill) {
        boolean[] asked = new boolean[1];
        Session[] opened = new Session[1];
        new Modal(hands).during(TITLE, () -> {
            opened[0] = bench.reopen("fence");
            hands.until("it is asked", () -> asked[0]);
        }, dialog -> {
            asked[0] = true;
            fill.accept(dialog);
        });
        return opened[0];
    }

    @Test
    void offersWhatAKilledProgramLeftAndTakesItOverAsOneChange() throws IOException {
        Positioner work = killed();
        Session session = reopen(dialog -> {
            String said = said(dialog);
            assertTrue(said.contains("“fence.pitchstack”") && said.contains("in 2 places")
                    && said.contains("stage “Rack”, index: 0 → 12"), said);
            assertTrue(said.contains(String.valueOf(Year.now().getValue())), "the day is named: " + said);
            hands.picture(dialog, "recover");
            answer(dialog, "Recover");
        });
        assertTrue(EcoreUtil.equals(work, session.positioner()));
        assertTrue(bench.editor().isDirty());
        session.history().undo();
        assertEquals(0, session.analysis().current().index(0), "and back to the file");
    }

    @Test
    void discardsWhatIsNotWanted() throws IOException {
        killed();
        reopen(dialog -> answer(dialog, "Discard"));
        assertFalse(bench.editor().isDirty());
        Path copy = left(file());
        hands.until("the copy is gone", () -> Files.notExists(copy));
    }

    /** Each keeps its own; what the other program has not saved is nobody else's, and stays. */
    @Test
    void leavesTheWorkOfAnotherRunningProgramAlone() throws IOException {
        ProcessHandle other = ProcessHandle.current().parent().orElseThrow();
        Path theirs = UnsavedCopies.beside(file(), new Owner(other.pid(),
                other.info().startInstant().orElseThrow().toEpochMilli()));
        killed();
        Files.move(left(file()), theirs);
        bench.reopen("fence");
        long end = System.currentTimeMillis() + 1000;
        while (System.currentTimeMillis() < end) {
            hands.settle();
        }
        assertEquals(0, questions());
        Session session = bench.editor().getAdapter(Session.class);
        session.run(new MoveStage(session.axis().getStages().get(0), 3));
        Path own = copy();
        hands.until("the own work is kept", () -> Files.exists(own));
        assertEquals(12, StackFile.load(theirs).positioner().getAxes().get(0).getStages().get(0).getIndex());
        bench.clear();
        assertTrue(Files.exists(theirs));
    }

    /** Taken over, it is this program's own, so that a third one leaves it alone. */
    @Test
    void keepsRecoveredWorkAsItsOwn() throws IOException {
        killed();
        reopen(dialog -> answer(dialog, "Recover"));
        Path left = left(file());
        Path own = copy();
        hands.until("it is kept anew", () -> Files.exists(own) && Files.notExists(left));
    }

    @Test
    void asksOneThingAfterAnother() throws IOException {
        Path second = folder.toRealPath().resolve("other.pitchstack");
        Path other = UnsavedCopies.beside(second, Owner.self());
        killed();
        Session session = bench.open("other", Stacks.plate());
        session.run(new MoveStage(session.axis().getStages().get(0), 12));
        hands.until("the work is kept", () -> Files.exists(other));
        byte[] kept = Files.readAllBytes(other);
        bench.clear();
        Files.write(left(second), kept);
        IEclipsePreferences list = InstanceScope.INSTANCE.getNode("pitchstack.unsaved");
        list.put(left(file()).toString(), file().toString());
        list.put(left(second).toString(), second.toString());
        List<Integer> open = new ArrayList<>();
        Modal next = new Modal(hands);
        new Modal(hands).during(TITLE, () -> {
            Recovery.begin(bench.page().getWorkbenchWindow());
            hands.until("both are asked", () -> open.size() == 2);
        }, first -> {
            open.add(questions());
            answer(first, "Discard");
            hands.until("the first is answered", first::isDisposed);
            next.expect(TITLE, dialog -> {
                open.add(questions());
                answer(dialog, "Discard");
            });
        });
        next.check(TITLE);
        assertEquals(List.of(1, 1), open, "questions open at once");
        hands.until("both are dropped", () -> Files.notExists(left(second)) && listed() == 0);
    }

    private static int questions() {
        return (int) Stream.of(Display.getCurrent().getShells()).filter(s -> s.isVisible() && s.getText().equals(TITLE))
                .count();
    }

    @Test
    void offersAtTheStartWhatWasInNoFileYet() throws IOException, BackingStoreException {
        Positioner work = Stacks.plate();
        Path apart = folder.resolve("apart.pitchstack");
        StackFile.save(work, apart);
        InstanceScope.INSTANCE.getNode("pitchstack.unsaved").put(apart.toString(), "");
        new Modal(hands).during(TITLE, () -> {
            Recovery.begin(bench.page().getWorkbenchWindow());
            hands.settle();
        }, dialog -> {
            assertTrue(said(dialog).contains("A stack that was in no file yet"), said(dialog));
            answer(dialog, "Recover");
        });
        assertTrue(EcoreUtil.equals(work, bench.editor().getAdapter(Session.class).positioner()));
        assertTrue(bench.editor().isDirty());
        bench.clear();
        hands.until("it is not offered again", () -> Files.notExists(apart));
    }

    @Test
    void keepsWorkApartWhereTheFolderTakesNothing() throws IOException {
        Session session = bench.open("fence", Stacks.millimetres());
        // A folder under the name of the copy can be neither replaced nor written.
        Files.createDirectories(copy().resolve("in the way"));
        session.run(new MoveStage(session.axis().getStages().get(0), 12));
        hands.until("the work is kept elsewhere", () -> kept().anyMatch(name -> !name.startsWith(folder.toString())));
        session.history().undo();
        hands.until("it is dropped", () -> kept().noneMatch(name -> !name.startsWith(folder.toString())));
        InstanceScope.INSTANCE.getNode("pitchstack.unsaved").remove(copy().toString());
    }

    private static Stream<String> kept() {
        try {
            return Stream.of(InstanceScope.INSTANCE.getNode("pitchstack.unsaved").keys());
        } catch (BackingStoreException e) {
            throw new AssertionError(e);
        }
    }

    private String said(Shell dialog) {
        return String.join(" ", hands.all(dialog, Label.class, l -> true).stream().map(Label::getText).toList());
    }

    private void answer(Shell dialog, String text) {
        hands.focus(hands.the(dialog, Button.class, b -> b.getText().replace("&", "").equals(text)));
        hands.chord(0, ' ');
    }
}
