// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchstack.edit.Property.Entry;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Stage;
import pitchstack.model.Target;

class PropertiesTest {
    private final Session session = Documents.session();
    private final Stage stage = session.axis().getStages().get(0);

    PropertiesTest() {
        Target target = PitchstackFactory.eINSTANCE.createTarget();
        target.setPosition("12 mm");
        session.run(AddElement.target(session.axis(), target));
        session.run(AddElement.wornRange(stage.getBaseRow(), NewStack.wornRange(3)));
        session.run(AddElement.shiftLimit(session.axis(), NewStack.shiftLimit(session.axis())));
    }

    @Test
    void enteringWhatIsShownChangesNothing() {
        for (EObject element : elements()) {
            for (Property property : Properties.of(session, element)) {
                if (!property.isDerived() && !property.text().isEmpty()) {
                    EObject before = EcoreUtil.copy(session.positioner());
                    enter(element, property.id(), property.text());
                    assertTrue(EcoreUtil.equals(before, session.positioner()), property.label());
                }
            }
        }
    }

    @Test
    void everyPropertyHasItsOwnIdALabelAndASentence() {
        for (EObject element : elements()) {
            Set<String> ids = new HashSet<>();
            for (Property property : Properties.of(session, element)) {
                assertTrue(ids.add(property.id()), property.id());
                assertTrue(property.tooltip().endsWith(".") && !property.label().isBlank(), property.id());
            }
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "pitch          | 0 mm      | must be above 0",
        "pitch          | abc       | is not a length",
        "pitch          | 12 per turn | rotary axis",
        "pitch          | ''        | cannot be left empty",
        "index          | 1000      | whole number from −18 to 88",
        "index          | 1.5       | whole number from −18 to 88",
        "minimumEngaged | 0         | whole number from 1",
        "releaseSeconds | -1        | number from 0 to 3600",
        "releaseSeconds | NaN       | number from 0 to 3600",
        "source         | stolen    | choose bought or printed",
        "scatter        | -3 um     | must not be negative",
        "reversalSeconds | 1 h      | number from 0 to 3600",
        "lastMove       | up        | choose none or forward or back",
    })
    void refusesWrongValuesWithTheReason(String id, String typed, String reason) {
        Entry.Refused refused = assertInstanceOf(Entry.Refused.class, property(stage, id).enter(typed));
        assertTrue(refused.sentence().contains(reason), refused.sentence());
    }

    /** The rack of a new document: rider 30 of 100 teeth, 12 engaged, so −18 to 88. */
    @Test
    void showsWhatFollowsFromTheRows() {
        assertEquals("−18 to 88", property(stage, "indices").text());
        assertEquals("30", property(stage, "engaged").text());
        enter(stage, "index", "-18");
        assertEquals("12", property(stage, "engaged").text());
        enter(stage, "pitch", "module 1");
        assertEquals("module 1", property(stage, "pitch").text());
        assertEquals("3.1416 mm", property(stage, "spacing").text());
    }

    @Test
    void clearsAnOptionalValueThatIsEmptied() {
        enter(session.axis(), "low", "-3 mm");
        assertEquals("-3 mm", property(session.axis(), "low").text());
        enter(session.axis(), "low", " ");
        assertEquals("", property(session.axis(), "low").text());
    }

    private List<EObject> elements() {
        return List.of(session.positioner(), session.axis(), stage, stage.getBaseRow(), stage.getRiderRow(),
                stage.getBaseRow().getWorn().get(0), session.axis().getTargets().get(0),
                session.axis().getShiftLimits().get(0));
    }

    private Property property(EObject element, String id) {
        return Properties.of(session, element).stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
    }

    private void enter(EObject element, String id, String typed) {
        session.run(assertInstanceOf(Entry.Accepted.class, property(element, id).enter(typed)).edit());
    }

    @Test
    void saysHowManyIndexErrorsAStageHas() {
        assertEquals("none", property(stage, "indexErrors").text());
        for (int index : new int[] {3, 4}) {
            var error = PitchstackFactory.eINSTANCE.createIndexError();
            error.setIndex(index);
            error.setError(index == 3 ? "-2 um" : "1 um");
            session.run(new AddElement<>(stage.getIndexErrors(), 0, error, "Add index error"));
        }
        assertEquals("2, at most 0.002 mm", property(stage, "indexErrors").text());
    }
}
