// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.RowPair;
import pitchstack.model.Axis;
import pitchstack.model.MeasurementRun;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Reading;
import pitchstack.model.Row;
import pitchstack.model.ShiftLimit;
import pitchstack.model.Stage;
import pitchstack.model.WornRange;
import pitchstack.model.file.StackFileException;
import pitchstack.model.file.StagesText;

/** Edits that lay a stack out. The rack of a new document has a rider of 30 on 100 teeth, 12 engaged: −18 to 88. */
class StageEditsTest {
    private final Session session = Documents.session();
    private final Axis axis = session.axis();

    private RowPair rows(int stage) {
        return session.analysis().spec().stages().get(stage).rows();
    }

    private List<String> names() {
        return axis.getStages().stream().map(Stage::getName).toList();
    }

    @Test
    void lengthensABaseRowAtItsStartWithEveryToothKeepingItsMate() {
        Row base = axis.getStages().get(0).getBaseRow();
        base.getWorn().add(NewStack.wornRange(7));
        session.run(new ResizeRow(base, 5, 0));
        assertEquals(105, base.getTeeth());
        assertEquals(new IndexRange(-23, 88), rows(0).indices(), "five more indices at the low end, none lost");
        assertEquals(12, base.getWorn().get(0).getFirst(), "the worn tooth is the same piece of steel");
        session.history().undo();
        assertEquals(new IndexRange(-18, 88), rows(0).indices());
        assertEquals(7, base.getWorn().get(0).getFirst());
    }

    @Test
    void lengthensABaseRowAtItsEnd() {
        session.run(new ResizeRow(axis.getStages().get(0).getBaseRow(), 0, 5));
        assertEquals(new IndexRange(-18, 93), rows(0).indices());
    }

    /** A rider that grows at its start reaches five teeth farther back over the base, and so stays engaged farther up. */
    @Test
    void lengthensARiderRowAtItsStart() {
        RowPair expected = new ResizeRow(axis.getStages().get(0).getRiderRow(), 5, 0).preview(rows(0));
        session.run(new ResizeRow(axis.getStages().get(0).getRiderRow(), 5, 0));
        assertEquals(new IndexRange(-18, 93), rows(0).indices());
        assertEquals(expected, rows(0));
    }

    @Test
    void cutsTeethWithTheirMarks() {
        Row base = axis.getStages().get(0).getBaseRow();
        WornRange across = NewStack.wornRange(2);
        across.setLast(6);
        base.getWorn().addAll(List.of(NewStack.wornRange(1), across, NewStack.wornRange(99)));
        session.run(new ResizeRow(base, -4, -3));
        assertEquals(93, base.getTeeth());
        assertEquals(1, base.getWorn().size());
        assertEquals(0, base.getWorn().get(0).getFirst());
        assertEquals(2, base.getWorn().get(0).getLast());
        assertThrows(IllegalArgumentException.class, () -> new ResizeRow(base, -93, 0));
        assertEquals(-92, ResizeRow.allowed(base, -500));
    }

    @Test
    void reordersStagesWithTheirLimitsAndReadings() {
        axis.getStages().add(NewStack.stage(axis));
        axis.getShiftLimits().addAll(List.of(limit(1, 1), limit(1, 2), limit(2, 3)));
        MeasurementRun run = PitchstackFactory.eINSTANCE.createMeasurementRun();
        Reading reading = PitchstackFactory.eINSTANCE.createReading();
        reading.getSetting().addAll(List.of(7, 8, 9));
        run.getReadings().add(reading);
        axis.getRuns().add(run);
        session.run(new ReorderStage(axis.getStages().get(0), 2));
        assertEquals(List.of("Fine stage", "Stage 3", "Rack"), names());
        assertEquals(List.of(8, 9, 7), reading.getSetting());
        assertEquals(List.of("3-3", "1-1", "1-2"), axis.getShiftLimits().stream()
                .map(limit -> limit.getLowest() + "-" + limit.getHighest()).toList());
    }

    private static ShiftLimit limit(int lowest, int highest) {
        ShiftLimit limit = PitchstackFactory.eINSTANCE.createShiftLimit();
        limit.setLowest(lowest);
        limit.setHighest(highest);
        limit.setLimit("10 mm");
        return limit;
    }

    @Test
    void duplicatesAStageAboveItselfUnderAnotherName() {
        session.run(PasteStages.duplicate(axis.getStages().get(0)));
        session.run(PasteStages.duplicate(axis.getStages().get(1)));
        assertEquals(List.of("Rack", "Rack 2", "Rack 3", "Fine stage"), names());
        axis.getStages().get(1).setName("Rack");
        assertTrue(EcoreUtil.equals(axis.getStages().get(0), axis.getStages().get(1)));
        assertNotSame(axis.getStages().get(0), axis.getStages().get(1));
    }

    @Test
    void carriesStagesThroughTextIntoAnotherFile() throws StackFileException {
        axis.getStages().get(1).getBaseRow().getWorn().add(NewStack.wornRange(3));
        MeasurementRun run = PitchstackFactory.eINSTANCE.createMeasurementRun();
        run.setId("run-1");
        axis.getRuns().add(run);
        axis.getStages().get(1).setCorrectionRun(run);
        axis.getStages().get(1).setCorrectionPpm(120);
        String text = StagesText.write(axis.getStages());
        Session other = Documents.session();
        other.run(PasteStages.of(other.axis(), 1, StagesText.read(text)));
        assertEquals(List.of("Rack", "Rack 2", "Fine stage 2", "Fine stage"),
                other.axis().getStages().stream().map(Stage::getName).toList());
        Stage pasted = other.axis().getStages().get(2);
        assertEquals(3, pasted.getBaseRow().getWorn().get(0).getFirst());
        assertEquals(120, pasted.getCorrectionPpm());
        assertNull(pasted.getCorrectionRun());
        assertEquals(run, axis.getStages().get(1).getCorrectionRun(), "what is copied stays as it is");
        assertThrows(StackFileException.class, () -> StagesText.read("37.625 in"));
    }

    @Test
    void countsFromAnotherPlaceWithTheStopsStayingWhereTheyAre() {
        session.run(new PlaceStop(axis, session.analysis().spec().scale(), true, 200_000_000_000_000L));
        assertEquals("200.000 mm", axis.getHigh());
        session.run(new MoveDatum(axis, session.analysis().spec(), 50_000_000_000_000L));
        assertEquals("-50.000 mm", axis.getDatum());
        assertEquals("150.000 mm", axis.getHigh());
        assertEquals(List.of(), session.analysis().findings());
        session.run(new PlaceStop(axis, session.analysis().spec().scale(), false, 1L));
        assertEquals(1, session.analysis().spec().low().orElseThrow(), "to the femtometre where it must be");
    }
}
