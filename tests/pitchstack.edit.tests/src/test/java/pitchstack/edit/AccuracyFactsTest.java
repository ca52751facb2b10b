// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchstack.analysis.accuracy.AxisFit;
import pitchstack.analysis.accuracy.RunReader;
import pitchstack.edit.Property.Entry;
import pitchstack.model.Axis;
import pitchstack.model.DisplayUnit;
import pitchstack.model.MeasurementRun;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.PrintSetup;
import pitchstack.model.Reading;
import pitchstack.model.Stage;
import pitchstack.model.ToothProfile;

/** What decides how well a device holds: facts that are typed, and edits of measurements. */
class AccuracyFactsTest {
    private final Session session = Documents.session();
    private final Axis axis = session.axis();
    private final Stage rack = axis.getStages().get(0);
    private final Stage fine = axis.getStages().get(1);
    private final MeasurementRun run = NewStack.run(axis, LocalDate.of(2026, 3, 2));

    AccuracyFactsTest() {
        session.run(AddElement.run(axis, run));
        session.run(new AddReadings(run, 0, List.of(reading(0, 0), reading(10, 0), reading(10, 5)), "Add readings"));
    }

    private static Reading reading(int... setting) {
        Reading reading = PitchstackFactory.eINSTANCE.createReading();
        for (int index : setting) {
            reading.getSetting().add(index);
        }
        return reading;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "stage      | preloadN              | -1      | number from 0 to 100000",
        "stage      | friction              | 2.5     | number from 0 to 2",
        "stage      | neighbourCorrelation  | 1       | number from 0 to 0.99",
        "stage      | seatScatter           | -1 um   | must not be negative",
        "stage      | depth                 | 0 mm    | must be above 0",
        "stage      | flankAngleDeg         | 90      | number from 5 to 60",
        "stage      | profile               | round   | choose own or ISO 53 A or",
        "row        | grade                 | 8       | ISO 1328-1:2013 class 1 to 11",
        "row        | grade                 | ISO 1328-1:2013 class 12 | class 1 to 11",
        "row        | faceWidth             | wide    | is not a length",
        "row        | numberEvery           | -5      | whole number from 0 to 1000",
        "positioner | sharedScale           | 1.1     | number from 0 to 1",
        "positioner | temperatureHalfWidthK | 41      | number from 0 to 40",
        "axis       | datumUncertainty      | -1 mm   | must not be negative",
        "run        | uncertainty           | 0       | must be above 0",
        "run        | instrumentScalePpm    | -1      | number from 0 to 10000",
        "reading    | index0                | 89      | whole number from −18 to 88",
        "reading    | approach              | left    | choose unknown or up or down",
        "reading    | value                 | ten     | is not a length",
    })
    void refusesWhatCannotBeWithTheNumberAndWhatIsAllowed(String element, String id, String typed, String reason) {
        Entry.Refused refused = assertInstanceOf(Entry.Refused.class, property(element(element), id).enter(typed));
        assertTrue(refused.sentence().contains(reason), refused.sentence());
    }

    private EObject element(String word) {
        return switch (word) {
            case "stage" -> rack;
            case "row" -> rack.getBaseRow();
            case "positioner" -> session.positioner();
            case "axis" -> axis;
            case "run" -> run;
            default -> run.getReadings().get(0);
        };
    }

    private Property property(EObject element, String id) {
        return Properties.of(session, element).stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
    }

    private void enter(EObject element, String id, String typed) {
        session.run(assertInstanceOf(Entry.Accepted.class, property(element, id).enter(typed)).edit());
    }

    @Test
    void keepsALengthWithTheUnitThatWasMeant() {
        session.positioner().setUnit(DisplayUnit.INCH);
        enter(rack.getBaseRow(), "faceWidth", "1/2");
        assertEquals("1/2 in", rack.getBaseRow().getFaceWidth());
        enter(rack.getBaseRow(), "faceWidth", "12 mm");
        assertEquals("12 mm", rack.getBaseRow().getFaceWidth());
        assertEquals("0 mm", TypedText.withUnit("0 mm", Lengths.scale(rack)));
    }

    @Test
    void givesAStageAToothFormWithItsFirstFact() {
        assertNull(rack.getToothForm());
        enter(rack, "profile", "ISO 53 B");
        assertEquals(ToothProfile.ISO53_B, rack.getToothForm().getProfile());
        session.history().undo();
        assertNull(rack.getToothForm());
    }

    @Test
    void readsTheGradesOfBothEditions() {
        enter(rack.getBaseRow(), "grade", "ISO 1328-1:2013 class 8");
        enter(rack.getBaseRow(), "grade", "ISO 1328-1:1995 grade 0");
        assertEquals("ISO 1328-1:1995 grade 0", rack.getBaseRow().getGrade());
    }

    /**
     * A rack 200 ppm long and a printed pair 800 ppm long, read without any error: 10 teeth of 5 mm are 50.010 mm, 20 are
     * 100.020 mm, and 5 of 4.9 mm are 24.5196 mm.
     */
    private AxisFit fitted() {
        List<Reading> exact = List.of(reading("0 mm", 0, 0), reading("50.010 mm", 10, 0), reading("100.020 mm", 20, 0),
                reading("24.5196 mm", 0, 5), reading("74.5296 mm", 10, 5));
        session.run(new RemoveReadings(run.getReadings()));
        session.run(new AddReadings(run, 0, exact, "Add readings"));
        return AxisFit.of(RunReader.read(axis, session.analysis().spec(), run), session.analysis().current());
    }

    private static Reading reading(String value, int... setting) {
        Reading reading = reading(setting);
        reading.setValue(value);
        return reading;
    }

    @Test
    void acceptsAFitAsOneChange() {
        AxisFit fit = fitted();
        EObject before = EcoreUtil.copy(session.positioner());
        session.run(new AcceptFit(axis, run, fit, false));
        assertEquals(200, rack.getCorrectionPpm(), 0.01);
        assertEquals(800, fine.getCorrectionPpm(), 0.01);
        assertEquals(List.of(run, run), List.of(rack.getCorrectionRun(), fine.getCorrectionRun()));
        assertEquals("2026-03-02", property(fine, "correctionRun").text());
        session.history().undo();
        assertTrue(EcoreUtil.equals(before, session.positioner()));
    }

    @Test
    void aTypedCorrectionIsNoLongerThatOfARun() {
        session.run(new AcceptFit(axis, run, fitted(), false));
        enter(rack, "correctionPpm", property(rack, "correctionPpm").text());
        assertEquals(run, rack.getCorrectionRun(), "the same number");
        enter(rack, "correctionPpm", "13");
        assertNull(rack.getCorrectionRun());
    }

    @Test
    void noStageNamesARunThatIsGone() {
        session.run(new AcceptFit(axis, run, fitted(), false));
        session.run(new RemoveElement(run));
        assertNull(rack.getCorrectionRun());
        assertEquals(200, rack.getCorrectionPpm(), 0.01);
        session.history().undo();
        assertEquals(run, rack.getCorrectionRun());
    }

    @Test
    void measuredSettingsFollowTheStages() {
        session.run(AddElement.stage(axis, 1, NewStack.stage(axis)));
        assertEquals(List.of(10, 0, 5), run.getReadings().get(2).getSetting());
        session.run(new ReorderStage(fine, 0));
        assertEquals(List.of(5, 10, 0), run.getReadings().get(2).getSetting());
        session.run(new RemoveElement(axis.getStages().get(2)));
        assertEquals(List.of(5, 10), run.getReadings().get(2).getSetting());
        session.run(new RemoveElement(rack));
        assertEquals(List.of(5, 10), run.getReadings().get(2).getSetting(), "it moved, so the run is of the stack before");
        assertTrue(property(run.getReadings().get(2), "index0").isDerived());
    }

    @Test
    void everyNewElementHasPropertiesWithSentences() {
        PrintSetup setup = PitchstackFactory.eINSTANCE.createPrintSetup();
        setup.setName("flat");
        session.run(AddElement.printSetup(session.positioner(), setup));
        enter(rack, "depth", "3 mm");
        for (EObject element : List.of(run, run.getReadings().get(0), setup, rack.getToothForm())) {
            List<Property> all = Properties.of(session, element);
            assertTrue(all.size() >= 3, element.toString());
            all.forEach(p -> assertTrue(p.tooltip().endsWith(".") && !p.label().isBlank(), p.id()));
        }
    }

    @Test
    void runsHaveIdsOfTheirOwn() {
        assertEquals("run-1", run.getId());
        assertEquals("run-2", NewStack.run(axis, LocalDate.of(2026, 3, 3)).getId());
    }
}
