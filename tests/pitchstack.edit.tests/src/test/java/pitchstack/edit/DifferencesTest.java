// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import pitchstack.model.Positioner;

/** What one document says otherwise than another, and taking it over. */
class DifferencesTest {
    private final Positioner before = NewStack.positioner();
    private final Positioner after = EcoreUtil.copy(before);

    @Test
    void areNoneBetweenEqualDocuments() {
        assertEquals(List.of(), Differences.between(before, after));
    }

    @Test
    void nameThePlaceTheOldAndTheNewValue() {
        after.setTitle("Fence");
        after.getAxes().get(0).getStages().get(0).setIndex(12);
        after.getAxes().get(0).getStages().get(1).getRiderRow().setTeeth(24);
        assertEquals(List.of("title: New positioner → Fence", "axis “Axis”, stage “Rack”, index: 0 → 12",
                "axis “Axis”, stage “Fine stage”, rider row, teeth: 30 → 24"), Differences.between(before, after));
    }

    @Test
    void nameWhatWasAddedAndRemoved() {
        after.getAxes().get(0).getStages().get(0).getBaseRow().getWorn().add(NewStack.wornRange(3));
        after.getAxes().get(0).getStages().remove(1);
        assertEquals(List.of("axis “Axis”, stage “Rack”, base row, worn range 1 added", "axis “Axis”, stage “Fine stage” removed"),
                Differences.between(before, after));
    }

    @Test
    void areTakenOverAsOneEditThatCanBeUndone() {
        Session session = Documents.session(before);
        Positioner start = EcoreUtil.copy(before);
        after.getAxes().get(0).getStages().get(0).setIndex(12);
        after.getAxes().add(NewStack.positioner().getAxes().get(0));
        after.getTitleBlock().setOwner("shop");
        session.run(new TakeOver(session.positioner(), after, "Recover"));
        assertTrue(EcoreUtil.equals(after, session.positioner()));
        assertEquals(2, after.getAxes().size(), "the other document stays as it is");
        assertTrue(session.positioner().getAxes().contains(session.axis()));
        session.history().undo();
        assertTrue(EcoreUtil.equals(start, session.positioner()));
        assertFalse(session.isDirty());
        session.history().redo();
        assertTrue(EcoreUtil.equals(after, session.positioner()));
    }
}
