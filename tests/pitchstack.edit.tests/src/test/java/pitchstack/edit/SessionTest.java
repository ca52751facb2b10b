// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;
import pitchstack.edit.SessionListener.Change;
import pitchstack.model.ApproachRule;
import pitchstack.model.Axis;
import pitchstack.model.DisplayUnit;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.ShiftLimit;

class SessionTest {
    private final Session session = Documents.session();
    private final Axis axis = session.axis();

    @Test
    void newDocumentsPassTheChecks() {
        assertEquals(List.of(), session.analysis().findings());
    }

    @Test
    void knowsWhereTheStagesStandAfterEachEditUndoAndRedo() {
        session.run(new MoveStage(axis.getStages().get(0), 12));
        assertEquals(Setting.of(12, 0), session.analysis().current());
        session.history().undo();
        assertEquals(Setting.of(0, 0), session.analysis().current());
        session.history().redo();
        assertEquals(Setting.of(12, 0), session.shown());
    }

    @Test
    void showsAPreviewWithoutChangingTheDocumentAndForgetsItAtTheNextEdit() {
        List<Change> heard = new ArrayList<>();
        session.addListener(heard::add);
        session.preview(Setting.of(3, -3));
        assertEquals(Setting.of(3, -3), session.shown());
        assertEquals(0, axis.getStages().get(0).getIndex());
        assertFalse(session.isDirty());
        session.run(new ApplySetting(axis, Setting.of(3, -3)));
        assertEquals(Optional.empty(), session.preview());
        assertEquals(List.of(Change.PREVIEW, Change.DOCUMENT), heard);
    }

    /** 101 teeth of 1/4 in are 25 1/4 in. */
    @Test
    void showsFractionsToThosePeopleWhoWantThemAndLeavesTheDocumentAlone() {
        session.run(new ApplySetting(axis, Setting.of(101, 0)));
        session.positioner().setUnit(DisplayUnit.INCH);
        axis.getStages().get(0).setPitch("0.25 in");
        session.showFractions(true);
        assertEquals("25 1/4 in", session.analysis().spec().scale().format(session.analysis().spec().position(session.shown())));
        session.showFractions(false);
        assertEquals("25.250 in", session.analysis().spec().scale().format(session.analysis().spec().position(session.shown())));
        session.history().undo();
        assertFalse(session.isDirty());
    }

    @Test
    void isDirtyUntilSavedAndAfterUndoingWhatWasSaved() {
        session.run(new MoveStage(axis.getStages().get(0), 1));
        assertTrue(session.isDirty());
        session.saved();
        assertFalse(session.isDirty());
        session.history().undo();
        assertTrue(session.isDirty());
    }

    @Test
    void isFoundFromEveryElementOfItsDocument() {
        assertSame(session, Session.of(axis.getStages().get(1).getRiderRow()).orElseThrow());
        assertEquals(Optional.empty(), Session.of(PitchstackFactory.eINSTANCE.createStage()));
        assertEquals(Optional.empty(), Session.of(NewStack.positioner()));
    }

    @Test
    void keepsItsHistoryAndTellsTheOthersWhenAListenerFails() {
        List<RuntimeException> faults = new ArrayList<>();
        Session guarded = new Session(Documents.document(NewStack.positioner()), faults::add);
        RuntimeException fault = new IllegalStateException("a faulty view");
        guarded.addListener(change -> {
            throw fault;
        });
        List<Change> heard = new ArrayList<>();
        guarded.addListener(heard::add);
        guarded.run(new MoveStage(guarded.axis().getStages().get(0), 2));
        guarded.run(new MoveStage(guarded.axis().getStages().get(0), 3));
        guarded.history().undo();
        guarded.history().undo();
        assertEquals(0, guarded.axis().getStages().get(0).getIndex());
        assertEquals(List.of(fault, fault, fault, fault), faults);
        assertEquals(4, heard.size());
    }

    @Test
    void notesWhichWayEachStageMovedLast() {
        session.run(new ApplySetting(axis, Setting.of(3, -3)));
        assertEquals(Directions.of(Direction.FORWARD, Direction.BACK), session.analysis().last());
        session.run(new ApplySetting(axis, Setting.of(1, -3)));
        assertEquals(Directions.of(Direction.BACK, Direction.BACK), session.analysis().last());
        session.run(new MoveStage(axis.getStages().get(1), 0));
        assertEquals(Directions.of(Direction.BACK, Direction.FORWARD), session.analysis().last());
        session.run(new MoveStage(axis.getStages().get(1), 0));
        assertEquals(Directions.of(Direction.BACK, Direction.FORWARD), session.analysis().last());
    }

    @Test
    void notesTheApproachOfAMoveThatMustEndInOneDirection() {
        axis.setApproach(ApproachRule.FORWARD);
        session.run(new ApplySetting(axis, Setting.of(-3, 0)));
        assertEquals(Directions.of(Direction.FORWARD, Direction.UNKNOWN), session.analysis().last());
    }

    @Test
    void keepsShiftLimitsOnTheirStagesWhenStagesComeAndGo() {
        session.run(AddElement.shiftLimit(axis, NewStack.shiftLimit(axis)));
        ShiftLimit limit = axis.getShiftLimits().get(0);
        session.run(AddElement.stage(axis, 0, NewStack.stage(axis)));
        assertEquals(List.of(2, 3), List.of(limit.getLowest(), limit.getHighest()));
        session.run(AddElement.stage(axis, 2, NewStack.stage(axis)));
        assertEquals(List.of(2, 4), List.of(limit.getLowest(), limit.getHighest()));
        session.run(AddElement.stage(axis, 4, NewStack.stage(axis)));
        assertEquals(List.of(2, 4), List.of(limit.getLowest(), limit.getHighest()));
        session.run(new RemoveElement(axis.getStages().get(1)));
        session.run(new RemoveElement(axis.getStages().get(2)));
        assertEquals(List.of(2, 2), List.of(limit.getLowest(), limit.getHighest()));
        session.run(new RemoveElement(axis.getStages().get(0)));
        assertEquals(List.of(1, 1), List.of(limit.getLowest(), limit.getHighest()));
        session.run(new RemoveElement(axis.getStages().get(0)));
        assertEquals(List.of(), axis.getShiftLimits());
        session.history().undo();
        assertEquals(1, axis.getShiftLimits().size());
    }

    @Test
    void namesEachEditInTheHistory() {
        session.run(new ApplySetting(axis, Setting.of(3, -3)));
        assertEquals("Set “Axis” to [3, −3]", session.history().getUndoCommand().getLabel());
    }
}
