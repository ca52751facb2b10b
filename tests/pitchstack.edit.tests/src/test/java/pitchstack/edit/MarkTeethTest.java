// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchstack.core.stack.Wear;
import pitchstack.edit.Property.Entry;
import pitchstack.edit.SessionListener.Change;
import pitchstack.model.Row;
import pitchstack.model.WearKind;
import pitchstack.model.WornRange;

/** Marks on the base row of the rack of a new document, which has 100 teeth; its rider has 30. */
class MarkTeethTest {
    private final Session session = Documents.session();
    private final Row row = session.axis().getStages().get(0).getBaseRow();
    private final Row rider = session.axis().getStages().get(0).getRiderRow();

    private ToothMark mark(int first, int last, WearKind kind) {
        return new ToothMark(row, first, last, kind, "");
    }

    private String marks() {
        return row.getWorn().stream().map(w -> w.getFirst() + "–" + w.getLast() + " " + w.getKind().getLiteral())
                .sorted().collect(Collectors.joining(", "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "0  | 9  | 0–9 barred, 20–29 worn",
        "15 | 22 | 15–22 barred, 23–29 worn",
        "22 | 25 | 20–21 worn, 22–25 barred, 26–29 worn",
        "27 | 40 | 20–26 worn, 27–40 barred",
        "20 | 29 | 20–29 barred",
        "10 | 60 | 10–60 barred",
    })
    void whatIsMarkedCountsInsteadOfWhatWasMarkedThere(int first, int last, String result) {
        session.run(new MarkTeeth(mark(20, 29, WearKind.WORN)));
        session.run(new MarkTeeth(mark(first, last, WearKind.BARRED)));
        assertEquals(result, marks());
        session.history().undo();
        assertEquals("20–29 worn", marks());
    }

    @Test
    void severalMarksAreOneEdit() {
        session.run(new MarkTeeth(List.of(mark(3, 4, WearKind.WORN), new ToothMark(rider, 0, 1, WearKind.BARRED, "chipped"))));
        assertEquals("Mark 2 ranges of teeth", session.history().getUndoCommand().getLabel());
        assertEquals("chipped", rider.getWorn().get(0).getNote());
        session.history().undo();
        assertEquals(List.of(), ToothMark.ranges(session.axis()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "90 | 100 | Tooth 100 is out of the row: the base row of “Rack” has teeth 0 to 99.",
        "-1 | 3   | Tooth -1 is out of the row: the base row of “Rack” has teeth 0 to 99.",
        "9  | 8   | The last tooth, 8, lies before the first, 9; swap the two.",
        "5  | 20  | Teeth 20 to 29 of the base row of “Rack” are already marked as worn; change that range, or name other teeth.",
        "50 | 50  | Tooth 50 of the base row of “Rack” is already marked as barred; change that range, or name other teeth.",
    })
    void saysWhyTeethCannotBeMarked(int first, int last, String sentence) {
        List<ToothMark> others = List.of(mark(20, 29, WearKind.WORN), mark(50, 50, WearKind.BARRED));
        assertEquals(Optional.of(sentence), MarkRules.refusal(mark(first, last, WearKind.WORN), others));
        assertEquals(Optional.empty(), MarkRules.refusal(mark(30, 49, WearKind.WORN), others));
        assertThrows(IllegalArgumentException.class, () -> new MarkTeeth(mark(9, 8, WearKind.WORN)));
    }

    @Test
    void supposesOnlyWhatIsWorseThanWhatIsMarked() {
        session.run(new MarkTeeth(mark(20, 29, WearKind.WORN)));
        assertTrue(MarkRules.refusalToSuppose(mark(25, 35, WearKind.WORN), List.of()).isPresent());
        assertFalse(MarkRules.refusalToSuppose(mark(25, 35, WearKind.BARRED), List.of()).isPresent());
        assertEquals(Optional.of("Tooth 35 of the base row of “Rack” is already supposed to be worn; change that range, or"
                + " name other teeth."),
                MarkRules.refusalToSuppose(mark(30, 40, WearKind.BARRED), List.of(mark(35, 35, WearKind.WORN))));
    }

    @Test
    void typingOneEndPastTheOtherTakesTheOtherAlong() {
        session.run(new MarkTeeth(mark(20, 29, WearKind.WORN)));
        WornRange range = row.getWorn().get(0);
        enter(range, "first", "40");
        assertEquals("40–40 worn", marks());
        enter(range, "last", "10");
        assertEquals("10–10 worn", marks());
        session.run(new MarkTeeth(mark(12, 15, WearKind.BARRED)));
        Entry.Refused refused = assertInstanceOf(Entry.Refused.class, property(range, "last").enter("12"));
        assertTrue(refused.sentence().startsWith("Teeth 12 to 15 of the base row"), refused.sentence());
        assertEquals("10–10 worn, 12–15 barred", marks());
    }

    @Test
    void movesARangeToAnotherRow() {
        session.run(new MarkTeeth(mark(20, 29, WearKind.WORN)));
        WornRange range = row.getWorn().get(0);
        session.run(new ChangeMark(range, ToothMark.of(range).on(rider)));
        assertEquals(List.of(range), rider.getWorn());
        assertEquals("", marks());
        session.history().undo();
        assertEquals("20–29 worn", marks());
    }

    @Test
    void supposedMarksLeaveTheDocumentAsItIs() {
        List<Change> changes = new ArrayList<>();
        session.addListener(changes::add);
        session.suppose(List.of(mark(20, 29, WearKind.BARRED)));
        assertEquals(List.of(Change.SUPPOSED), changes);
        assertFalse(session.isDirty());
        // The 30 rider teeth stand over base teeth n to n + 29.
        assertEquals(Wear.BARRED, session.supposedSpec().stages().get(0).rows().wearAt(0));
        assertEquals(Wear.CLEAN, session.supposedSpec().stages().get(0).rows().wearAt(30));
        assertEquals(Wear.CLEAN, session.analysis().spec().stages().get(0).rows().wearAt(0));
        session.run(new RemoveElement(session.axis().getStages().get(0)));
        assertEquals(List.of(), session.supposed(), "its row is gone");
        session.history().undo();
        assertEquals(1, session.supposed().size());
    }

    @Test
    void tellsOfAPositionPointedAtOnce() {
        List<Change> changes = new ArrayList<>();
        session.addListener(changes::add);
        session.point(OptionalLong.of(5));
        session.point(OptionalLong.of(5));
        session.point(OptionalLong.empty());
        assertEquals(List.of(Change.POINTED, Change.POINTED), changes);
    }

    private Property property(WornRange range, String id) {
        return Properties.of(session, range).stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
    }

    private void enter(WornRange range, String id, String typed) {
        session.run(assertInstanceOf(Entry.Accepted.class, property(range, id).enter(typed)).edit());
    }
}
