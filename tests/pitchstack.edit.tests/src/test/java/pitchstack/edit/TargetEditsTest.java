// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import pitchstack.model.Axis;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Target;

/** The list of targets is filled, thinned out and put in order, each as one change. */
class TargetEditsTest {
    private final Session session = Documents.session();
    private final Axis axis = session.axis();

    @BeforeEach
    void fiveTargets() {
        axis.getTargets().clear();
        session.run(new AddTargets(axis, 0, named("a", "b", "c", "d", "e"), "Add 5 targets"));
    }

    @Test
    void addsInTheMiddleAndIsTakenBackAtOnce() {
        session.run(new AddTargets(axis, 2, named("x", "y"), "Paste 2 targets"));
        assertEquals("abxycde", order());
        assertEquals("Paste 2 targets", session.history().getUndoCommand().getLabel());
        session.history().undo();
        assertEquals("abcde", order());
    }

    @Test
    void removesSeveralAndPutsThemBackWhereTheyWere() {
        session.run(new RemoveTargets(chosen(0, 3)));
        assertEquals("bce", order());
        assertEquals("Delete 2 targets", session.history().getUndoCommand().getLabel());
        session.history().undo();
        assertEquals("abcde", order());
        assertThrows(IllegalArgumentException.class, () -> new RemoveTargets(List.of()));
    }

    @Test
    void movesByOnePlaceAndStopsAtTheEnds() {
        session.run(ArrangeTargets.byOne(axis, chosen(1, 3), false));
        assertEquals("badce", order());
        session.run(ArrangeTargets.byOne(axis, chosen(0, 2), false));
        assertEquals("bdace", order(), "the first stays, the other moves on");
        assertTrue(ArrangeTargets.byOne(axis, chosen(0, 1), false).isIdle(), "both stand at the end");
        session.run(ArrangeTargets.byOne(axis, chosen(2, 4), true));
        assertEquals("bdcae", order(), "the last stays, the other moves on");
        assertEquals("Move 2 targets down", session.history().getUndoCommand().getLabel());
        session.history().undo();
        session.history().undo();
        session.history().undo();
        assertEquals("abcde", order());
    }

    @Test
    void takesOnAnOrderOfTheSameTargetsOnly() {
        ArrangeTargets turned = new ArrangeTargets(axis, chosen(4, 3, 2, 1, 0), "Turn round");
        assertFalse(turned.isIdle());
        session.run(turned);
        assertEquals("edcba", order());
        assertThrows(IllegalArgumentException.class, () -> new ArrangeTargets(axis, chosen(0, 1, 2, 3, 3), "Twice"));
        assertThrows(IllegalArgumentException.class, () -> new ArrangeTargets(axis, chosen(0, 1), "Too few"));
    }

    private List<Target> chosen(int... places) {
        return Arrays.stream(places).mapToObj(axis.getTargets()::get).toList();
    }

    private static List<Target> named(String... names) {
        return Stream.of(names).map(name -> {
            Target target = PitchstackFactory.eINSTANCE.createTarget();
            target.setName(name);
            target.setPosition("1 mm");
            return target;
        }).toList();
    }

    private String order() {
        return axis.getTargets().stream().map(Target::getName).collect(Collectors.joining());
    }
}
