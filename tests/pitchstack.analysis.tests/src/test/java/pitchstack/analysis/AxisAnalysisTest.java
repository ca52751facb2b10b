// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import pitchstack.core.check.Finding;
import pitchstack.core.check.Place;
import pitchstack.core.check.Severity;
import pitchstack.core.stack.Setting;
import pitchstack.model.Axis;
import pitchstack.model.AxisKind;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.Target;

class AxisAnalysisTest {
    private final Positioner positioner = Samples.positioner(AxisKind.LINEAR, "5 mm", "4.9 mm");
    private final Axis axis = positioner.getAxes().get(0);

    @Test
    void keepsItsPlannerWhileOnlyIndicesChange() {
        AxisAnalysis before = AxisAnalysis.of(positioner, axis);
        axis.getStages().get(0).setIndex(7);
        AxisAnalysis moved = AxisAnalysis.of(positioner, axis, before);
        assertEquals(Setting.of(7, 0), moved.current());
        assertSame(before.planner().orElseThrow(), moved.planner().orElseThrow());
        axis.getStages().get(0).setPitch("5.1 mm");
        assertNotSame(before.planner().orElseThrow(), AxisAnalysis.of(positioner, axis, moved).planner().orElseThrow());
    }

    @Test
    void preparesItsPlannerWhenItIsFirstAskedFor() {
        AxisAnalysis analysis = AxisAnalysis.of(positioner, axis);
        assertFalse(analysis.isPrepared());
        analysis.planner();
        assertTrue(analysis.isPrepared());
        axis.getStages().get(0).setIndex(3);
        assertTrue(AxisAnalysis.of(positioner, axis, analysis).isPrepared(), "the numbers are the same");
        axis.getStages().get(0).setPitch("5.1 mm");
        assertFalse(AxisAnalysis.of(positioner, axis, analysis).isPrepared());
    }

    /** 2 · 5 mm − 3 · 4.9 mm = −4.7 mm. */
    @Test
    void tellsAPositionOnlyWhereEveryTextCanBeRead() {
        Setting setting = Setting.of(2, -3);
        assertEquals(OptionalLong.of(-4_700_000_000_000L), AxisAnalysis.of(positioner, axis).position(setting));
        axis.getStages().get(1).setPitch("wrong");
        assertEquals(OptionalLong.empty(), AxisAnalysis.of(positioner, axis).position(setting));
        axis.getStages().get(1).setPitch("9000 m");
        assertEquals(OptionalLong.empty(), AxisAnalysis.of(positioner, axis).position(setting), "too large a number");
    }

    @Test
    void plansNothingWhileATextCannotBeRead() {
        axis.getStages().get(1).setPitch("4.9 furlongs");
        AxisAnalysis analysis = AxisAnalysis.of(positioner, axis);
        assertTrue(analysis.planner().isEmpty());
        assertEquals("unreadable-pitch", analysis.findings().get(0).id());
        assertSame(axis.getStages().get(1), Places.element(axis, analysis.findings().get(0).place()));
    }

    /** Planning goes on: only this target is left out of lists. */
    @Test
    void warnsOfATargetThatCannotBeRead() {
        Target target = PitchstackFactory.eINSTANCE.createTarget();
        target.setName("Slot");
        target.setPosition("4.9 furlongs");
        axis.getTargets().add(target);
        AxisAnalysis analysis = AxisAnalysis.of(positioner, axis);
        Finding finding = analysis.findings().get(0);
        assertEquals("unreadable-target", finding.id());
        assertEquals(Severity.WARNING, finding.severity());
        assertTrue(finding.sentence().startsWith("Target “Slot”: "), finding.sentence());
        assertTrue(analysis.planner().isPresent());
        axis.setTolerance("-1 mm");
        target.setPosition("4.9 mm");
        assertEquals(List.of("tolerance-negative"),
                AxisAnalysis.of(positioner, axis).findings().stream().map(Finding::id).toList(), "said once");
        axis.setTolerance("1 mm");
        assertEquals(List.of(), AxisAnalysis.of(positioner, axis).findings());
    }

    @Test
    void findsTheElementOfEveryPlace() {
        var range = PitchstackFactory.eINSTANCE.createWornRange();
        axis.getStages().get(0).getRiderRow().getWorn().add(range);
        assertSame(axis, Places.element(axis, Place.AXIS));
        assertSame(axis.getStages().get(1), Places.element(axis, Place.stage(1)));
        assertSame(axis.getStages().get(1).getBaseRow(), Places.element(axis, Place.row(1, Place.Part.BASE_ROW)));
        Place worn = Place.worn(0, Place.Part.RIDER_ROW, 0);
        assertSame(range, Places.element(axis, worn));
        assertEquals("stage “Stage 1”, rider row, worn range 1", Places.words(axis, worn));
        assertSame(axis, Places.element(axis, Place.stage(9)));
    }
}
