// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchstack.core.check.Finding;
import pitchstack.core.check.Place;
import pitchstack.core.check.Severity;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexErrors;
import pitchstack.core.stack.Setting;
import pitchstack.model.Axis;
import pitchstack.model.AxisKind;
import pitchstack.model.IndexError;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.Stage;

/** Measured errors of single indices, from the file to the numbers. The rows of the samples meet at indices −59 to 59. */
class IndexErrorsTest {
    private static final long MM = 1_000_000_000_000L;
    private static final long UM = 1_000_000_000L;
    private final Positioner positioner = Samples.positioner(AxisKind.LINEAR, "5 mm", "4.9 mm");
    private final Axis axis = positioner.getAxes().get(0);

    private static void add(Stage stage, int index, String error) {
        IndexError entry = PitchstackFactory.eINSTANCE.createIndexError();
        entry.setIndex(index);
        entry.setError(error);
        stage.getIndexErrors().add(entry);
    }

    private AxisSpec sound() {
        AxisReading reading = AxisReader.read(positioner, axis);
        assertEquals(List.of(), reading.unreadable());
        assertEquals(List.of(), reading.remarks());
        return reading.spec();
    }

    private Finding only(String id, Severity severity) {
        AxisAnalysis analysis = AxisAnalysis.of(positioner, axis);
        assertEquals(List.of(id), analysis.findings().stream().map(Finding::id).toList());
        Finding finding = analysis.findings().get(0);
        assertEquals(severity, finding.severity());
        assertEquals(severity == Severity.ERROR, analysis.hasErrors());
        return finding;
    }

    @Test
    void movesTheIndexMeasuredAndNoOther() {
        add(axis.getStages().get(0), 20, "3 um");
        add(axis.getStages().get(1), -2, "-1/4 mm");
        AxisSpec spec = sound();
        assertEquals(100 * MM + 3 * UM, spec.position(Setting.of(20, 0)));
        assertEquals(95 * MM, spec.position(Setting.of(19, 0)));
        // 100.003 − 9.8 − 0.25
        assertEquals(89_953 * UM, spec.position(Setting.of(20, -2)));
    }

    @Test
    void leavesAFileWithoutErrorsAsItWas() {
        assertEquals(IndexErrors.NONE, sound().stages().get(0).errors());
    }

    /** x = (60 · 5 mm + 0.25 mm) · (1 + 68·10⁻⁶ · 15) = 300.25 mm · 1.00102. */
    @Test
    void growsWithTheStage() {
        positioner.setTemperatureC(35);
        axis.getStages().get(0).setExpansionPpmPerK(68);
        add(axis.getStages().get(0), 50, "0.25 mm");
        // 250.25 mm · 1.00102 = 250.505255 mm
        assertEquals(250_505_255_000_000L, sound().position(Setting.of(50, 0)));
    }

    /** x = 20 · 5 mm · (1 + 200·10⁻⁶) + 0.1 mm: the correction was fitted to the pitch, the error is what it left. */
    @Test
    void isNotStretchedByThePitchCorrection() {
        axis.getStages().get(0).setCorrectionPpm(200);
        add(axis.getStages().get(0), 20, "0.1 mm");
        assertEquals(100_120 * UM, sound().position(Setting.of(20, 0)));
    }

    @Test
    void isAnAngleWithoutTemperatureOnARotaryAxis() {
        Positioner table = Samples.positioner(AxisKind.ROTARY, "360 per turn");
        table.setTemperatureC(35);
        Stage ring = table.getAxes().get(0).getStages().get(0);
        ring.setExpansionPpmPerK(68);
        add(ring, 12, "-30 arcsec");
        AxisSpec spec = AxisReader.read(table, table.getAxes().get(0)).spec();
        assertEquals(spec.scale().parse("11°59'30\""), spec.position(Setting.of(12)));
    }

    @Test
    void saysWhichErrorCannotBeRead() {
        add(axis.getStages().get(1), 4, "2,5 um");
        Finding finding = only("unreadable-index-error", Severity.ERROR);
        assertSame(axis.getStages().get(1), Places.element(axis, finding.place()));
        assertEquals("2,5 um", finding.value());
        assertTrue(finding.sentence().startsWith("The error of index 4 cannot be read: "), finding.sentence());
        axis.getStages().get(1).getIndexErrors().get(0).setError(null);
        only("unreadable-index-error", Severity.ERROR);
        axis.getStages().get(1).getIndexErrors().get(0).setError("2.5 um");
        sound();
    }

    @Test
    void refusesTwoErrorsOfOneIndex() {
        add(axis.getStages().get(0), 4, "2 um");
        add(axis.getStages().get(0), 4, "3 um");
        Finding finding = only("index-error-twice", Severity.ERROR);
        assertEquals("Stage “Stage 1” gives the error of index 4 more than once; keep one of them.", finding.sentence());
    }

    @Test
    void warnsOfAnErrorThatNoMoveReaches() {
        add(axis.getStages().get(0), 60, "2 um");
        add(axis.getStages().get(0), -59, "2 um");
        Finding finding = only("index-error-outside-rows", Severity.WARNING);
        assertEquals(Place.stage(0), finding.place());
        assertEquals("Stage “Stage 1” has an error for index 60, but its rows meet from index -59 to 59 only; delete the"
                + " error or lengthen a row.", finding.sentence());
    }

    @Test
    void findsAnErrorOfHalfAPitch() {
        add(axis.getStages().get(0), 3, "2.5 mm");
        only("index-error-too-large", Severity.ERROR);
        axis.getStages().get(0).getIndexErrors().get(0).setError("2.49 mm");
        sound();
    }

    @Test
    void takesNoMemoryForErrorsOfRowsThatAreTooLong() {
        axis.getStages().get(0).getBaseRow().setTeeth(Integer.MAX_VALUE - 100);
        add(axis.getStages().get(0), -40, "2 um");
        add(axis.getStages().get(0), 2_000_000_000, "2 um");
        assertTrue(AxisAnalysis.of(positioner, axis).hasErrors());
    }
}
