// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.model.Axis;
import pitchstack.model.MeasurementRun;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.Stage;
import pitchstack.model.file.StackFileException.Problem;

/** What cannot be saved, and what saving fills in. */
class SavableTest {
    private static final PitchstackFactory FACTORY = PitchstackFactory.eINSTANCE;
    @TempDir
    private Path folder;
    private Path file;
    private final Positioner positioner = Samples.titled("Plate");
    private final Axis axis = positioner.getAxes().get(0);
    private final Stage stage = FACTORY.createStage();

    @BeforeEach
    void addAStage() {
        file = folder.resolve("plate.pitchstack");
        stage.setName("Rack");
        axis.getStages().add(stage);
    }

    @Test
    void namesTheControlCharacterAndWhereItIs() {
        stage.setMaterial("steel\u0007");
        refuses("material of Stage “Rack” holds the control character U+0007, which a file cannot hold; take it out.");
    }

    @Test
    void refusesHalfACharacter() {
        positioner.setTitle("\ud83d");
        stage.setName(null);
        refuses("title of Positioner “\ud83d” holds the control character U+D83D, which a file cannot hold; take it out.");
    }

    @Test
    void refusesNumbersWithoutEnd() {
        stage.setExpansionPpmPerK(Double.NaN);
        refuses("expansionPpmPerK of Stage “Rack” is NaN; a file holds numbers with an end only.");
        stage.setExpansionPpmPerK(Double.NEGATIVE_INFINITY);
        refuses("expansionPpmPerK of Stage “Rack” is -Infinity; a file holds numbers with an end only.");
    }

    @Test
    void refusesARunThatIsNotInTheFile() {
        MeasurementRun elsewhere = FACTORY.createMeasurementRun();
        elsewhere.setId("run-1");
        stage.setCorrectionRun(elsewhere);
        refuses("Stage “Rack” takes its correction from a measurement run that is not in this file; choose one of its"
                + " own, or none.");
    }

    @Test
    void refusesTwoRunsOfOneId() {
        run("a");
        run("a");
        refuses("two measurement runs have the id “a”; give one of them another.");
    }

    @Test
    void refusesMoreThanCouldBeReadAgain() {
        positioner.setTitle("n".repeat(StackFile.MAX_BYTES));
        refuses("the file is larger than the 16 MB that a stack file may have.");
    }

    @Test
    void givesRunsWithoutAnIdTheFirstFreeOneInTheFileOnly() throws Exception {
        run("run-2");
        MeasurementRun nameless = run(null);
        run(null);
        stage.setCorrectionRun(nameless);
        StackFile.save(positioner, file);
        Axis read = StackFile.load(file).positioner().getAxes().get(0);
        assertEquals(List.of("run-2", "run-1", "run-3"), read.getRuns().stream().map(MeasurementRun::getId).toList());
        assertSame(read.getRuns().get(1), read.getStages().get(0).getCorrectionRun());
        assertNull(nameless.getId());
        assertEquals("run-1", RunIds.free(positioner));
    }

    @Test
    void leavesThePositionerInItsResource() throws Exception {
        StackDocument document = StackFile.create(file);
        assertFalse(Files.exists(file));
        StackFile.save(document.positioner(), file);
        assertSame(document.resource(), document.positioner().eResource());
        assertSame(document.positioner(), document.resource().getContents().get(0));
        assertEquals(file.toAbsolutePath().toString(), document.resource().getURI().toFileString());
    }

    @Test
    void writesTheDefaultWhereAnAttributeWithADefaultHoldsNothing() throws Exception {
        positioner.setLineWidth(null);
        StackFile.save(positioner, file);
        assertEquals("0.4 mm", StackFile.load(file).positioner().getLineWidth());
    }

    @Test
    void letsTheResourceNeitherLoadNorSaveByItself() throws Exception {
        StackFile.save(positioner, file);
        StackDocument document = StackFile.load(file);
        assertThrows(UnsupportedOperationException.class, () -> document.resource().save(null));
    }

    private MeasurementRun run(String id) {
        MeasurementRun run = FACTORY.createMeasurementRun();
        run.setId(id);
        axis.getRuns().add(run);
        return run;
    }

    private void refuses(String sentence) {
        StackFileException e = assertThrows(StackFileException.class, () -> StackFile.save(positioner, file));
        assertEquals("plate.pitchstack: " + sentence, e.getMessage());
        assertFalse(Files.exists(file));
        assertEquals(e.getMessage().contains("larger") ? Problem.TOO_LARGE : Problem.UNSAVABLE, e.problem());
    }
}
