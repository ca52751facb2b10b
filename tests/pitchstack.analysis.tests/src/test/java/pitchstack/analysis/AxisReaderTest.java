// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchstack.core.check.Finding;
import pitchstack.core.check.Severity;
import pitchstack.core.stack.Approach;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;
import pitchstack.model.ApproachRule;
import pitchstack.model.Axis;
import pitchstack.model.AxisKind;
import pitchstack.model.DisplayUnit;
import pitchstack.model.LastMove;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.WearKind;

class AxisReaderTest {
    private static final long MM = 1_000_000_000_000L;
    private static final long UM = 1_000_000_000L;

    /** π and 25.4·π/32 from the definition of module (ISO 54) and diametral pitch; an inch is 25.4 mm. */
    @ParameterizedTest
    @CsvSource({
        "4.9 mm,     4900000000000",
        "1/4 in CP,  6350000000000",
        "0.1 in,     2540000000000",
        "module 1,   3141592653590",
        "32 DP,      2493639168787",
        "120 um,      120000000000",
    })
    void derivesTheExactPitchFromWhatWasTyped(String typed, long femtometres) {
        assertEquals(femtometres, spec(Samples.positioner(AxisKind.LINEAR, typed)).stages().get(0).pitch());
    }

    @Test
    void takesBareNumbersInTheUnitOfTheFile() {
        Positioner inches = Samples.positioner(AxisKind.LINEAR, "0.25");
        inches.setUnit(DisplayUnit.INCH);
        inches.getAxes().get(0).setDatum("1/2");
        assertEquals(6_350_000_000_000L, spec(inches).stages().get(0).pitch());
        assertEquals(12_700_000_000_000L, spec(inches).datum());
    }

    @Test
    void readsShiftLimitsApproachAndTurningRound() {
        Positioner positioner = Samples.positioner(AxisKind.LINEAR, "5 mm", "4.9 mm", "4.8 mm");
        Axis axis = positioner.getAxes().get(0);
        axis.setApproach(ApproachRule.BACK);
        axis.getStages().get(1).setReversalSeconds(2.5);
        axis.getStages().get(2).setLastMove(LastMove.FORWARD);
        var limit = PitchstackFactory.eINSTANCE.createShiftLimit();
        limit.setLowest(2);
        limit.setHighest(3);
        limit.setLimit("15 mm");
        axis.getShiftLimits().add(limit);
        AxisReading reading = AxisReader.read(positioner, axis);
        assertEquals(List.of(), reading.unreadable());
        assertEquals(Approach.BACK, reading.spec().approach());
        assertEquals(new EffortCost(4000, 1000, 2500), reading.spec().stages().get(1).cost());
        assertEquals(Directions.of(Direction.UNKNOWN, Direction.UNKNOWN, Direction.FORWARD), reading.last());
        // People count stages from 1, the core from 0.
        assertEquals(List.of(new ShiftLimit(1, 2, 15 * MM)), reading.spec().shiftLimits());
        limit.setLimit("wide");
        assertEquals("unreadable-shift-limit", AxisReader.read(positioner, axis).unreadable().get(0).id());
    }

    @Test
    void takesWhatAFileDoesNotSayAsNoRuleAndNoCost() {
        AxisReading reading = AxisReader.read(Samples.positioner(AxisKind.LINEAR, "5 mm"),
                Samples.positioner(AxisKind.LINEAR, "5 mm").getAxes().get(0));
        assertEquals(Approach.EITHER, reading.spec().approach());
        assertEquals(List.of(), reading.spec().shiftLimits());
        assertEquals(0, reading.spec().stages().get(0).cost().reversalMs());
        assertEquals(Directions.unknown(1), reading.last());
    }

    @Test
    void readsRowsWearLimitsAndIndices() {
        Positioner positioner = Samples.positioner(AxisKind.LINEAR, "5 mm", "4.9 mm");
        Axis axis = positioner.getAxes().get(0);
        axis.setLow("-10 mm");
        axis.getStages().get(1).setIndex(-3);
        var worn = PitchstackFactory.eINSTANCE.createWornRange();
        worn.setFirst(4);
        worn.setLast(6);
        worn.setKind(WearKind.BARRED);
        axis.getStages().get(0).getBaseRow().getWorn().add(worn);
        AxisReading reading = AxisReader.read(positioner, axis);
        assertEquals(OptionalLong.of(-10 * MM), reading.spec().low());
        assertEquals(OptionalLong.empty(), reading.spec().high());
        assertEquals(Setting.of(0, -3), reading.current());
        assertEquals(List.of(new WornRange(new ToothSpan(4, 6), Wear.BARRED)),
                reading.spec().stages().get(0).rows().base().worn());
        // A rider of 20 with 12 engaged may hang 8 over either end: first tooth from −8 to 88, less the start of 40.
        assertEquals(new IndexRange(-48, 48), reading.spec().stages().get(0).rows().indices());
    }

    /** Growth of 300 mm at +15 K: L·α·ΔT, steel 51.75 µm and PLA 306 µm. */
    @ParameterizedTest
    @CsvSource({"11.5, 51750", "68, 306000"})
    void growsWithTemperature(double ppmPerK, long nanometres) {
        Positioner positioner = Samples.positioner(AxisKind.LINEAR, "5 mm");
        positioner.setTemperatureC(35);
        positioner.getAxes().get(0).getStages().get(0).setExpansionPpmPerK(ppmPerK);
        assertEquals(300 * MM + nanometres * UM / 1000, spec(positioner).position(Setting.of(60)));
    }

    @Test
    void appliesTheFittedCorrectionToEveryTooth() {
        Positioner positioner = Samples.positioner(AxisKind.LINEAR, "5 mm");
        positioner.getAxes().get(0).getStages().get(0).setCorrectionPpm(200);
        assertEquals(100 * MM + 20 * UM, spec(positioner).position(Setting.of(20)));
    }

    @Test
    void leavesTemperatureOutOfAngles() {
        Positioner positioner = Samples.positioner(AxisKind.ROTARY, "360 per turn");
        positioner.setTemperatureC(35);
        positioner.getAxes().get(0).getStages().get(0).setExpansionPpmPerK(68);
        AxisSpec spec = spec(positioner);
        assertEquals(spec.scale().turn() / 360, spec.stages().get(0).pitch());
    }

    @Test
    void countsEveryRingOfARotaryAxisInWholes() {
        AxisSpec spec = spec(Samples.positioner(AxisKind.ROTARY, "25 per turn", "27 per turn", "32 per turn"));
        for (int j = 0; j < 3; j++) {
            assertEquals(0, spec.scale().turn() % spec.stages().get(j).pitch());
        }
    }

    @Test
    void notesEveryTextThatCannotBeReadAndGoesOn() {
        Positioner positioner = Samples.positioner(AxisKind.LINEAR, "5 mm", "five", "", "360 per turn");
        positioner.getAxes().get(0).setDatum("12,5");
        positioner.setLineWidth("thin");
        List<Finding> unreadable = AxisReader.read(positioner, positioner.getAxes().get(0)).unreadable();
        assertEquals(List.of("unreadable-pitch", "unreadable-pitch", "unreadable-pitch", "unreadable-datum",
                "unreadable-line-width"), unreadable.stream().map(Finding::id).toList());
        assertTrue(unreadable.stream().allMatch(f -> f.severity() == Severity.ERROR));
        assertTrue(unreadable.get(3).sentence().contains("point and not a comma"), unreadable.get(3).sentence());
    }

    @Test
    void refusesCorrectionsThatAreNoNumbers() {
        Positioner positioner = Samples.positioner(AxisKind.LINEAR, "5 mm");
        positioner.getAxes().get(0).getStages().get(0).setCorrectionPpm(Double.NaN);
        assertEquals("unreadable-pitch-correction",
                AxisReader.read(positioner, positioner.getAxes().get(0)).unreadable().get(0).id());
    }

    private static AxisSpec spec(Positioner positioner) {
        AxisReading reading = AxisReader.read(positioner, positioner.getAxes().get(0));
        assertEquals(List.of(), reading.unreadable());
        return reading.spec();
    }
}
