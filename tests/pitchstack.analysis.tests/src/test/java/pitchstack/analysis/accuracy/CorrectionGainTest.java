// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import pitchstack.core.coverage.Outcome;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.Stop;
import pitchstack.core.stack.Approach;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;

/** A rack of 5 mm that turns out to be 5.001 mm, so that tooth n stands n µm too far. */
class CorrectionGainTest {
    private static final long UM = 1_000_000_000L;
    private static final long MM = 1000 * UM;

    private static AxisSpec rack(long pitch) {
        StageSpec stage = new StageSpec("Rack", Source.BOUGHT, 5 * MM, pitch,
                new RowPair(new RowSpec(130, List.of()), new RowSpec(20, List.of()), 0, 20), new EffortCost(4000, 1000, 0));
        return new AxisSpec("Axis", new LinearScale(LengthUnit.MM), List.of(stage), 0, OptionalLong.empty(),
                OptionalLong.empty(), List.of(), Approach.EITHER, 0, OptionalLong.empty());
    }

    /** 100 mm is tooth 20, 20 µm off within 30; 500 mm is tooth 100, 100 µm off; 502 mm is between teeth. */
    @Test
    void tellsHowFarOldSettingsReallyAreOffAndWhatTheNewPlanReaches() {
        List<Stop> stops = List.of(new Stop("near", 100 * MM, 30 * UM), new Stop("far", 500 * MM, 30 * UM),
                new Stop("between", 502 * MM, 30 * UM));
        CorrectionGain gain = CorrectionGain.of(rack(5 * MM), rack(5 * MM + UM), Setting.of(0), Directions.unknown(1), stops,
                Progress.NONE).get();
        assertEquals(OptionalLong.of(20 * UM), gain.stops().get(0).trulyOff());
        assertTrue(gain.stops().get(0).heldBefore());
        assertEquals(OptionalLong.of(100 * UM), gain.stops().get(1).trulyOff());
        assertFalse(gain.stops().get(1).heldBefore());
        assertTrue(gain.stops().get(1).after().isEmpty(), "the nearest tooth is 100 µm off, and the plan says so");
        assertEquals(OptionalLong.empty(), gain.stops().get(2).trulyOff());
        assertEquals(List.of(1L, 1L), List.of(gain.heldBefore(), gain.heldAfter()));
        assertEquals(OptionalLong.of(100 * UM), gain.largestBefore());
        assertEquals(OptionalLong.of(20 * UM), gain.largestAfter());
    }

    @Test
    void endsEarlyWhenNobodyWantsItAnyMore() {
        Progress unwanted = new Progress() {
            @Override
            public boolean isCancelled() {
                return true;
            }

            @Override
            public void done(long part, long of) {
                // Nobody watches.
            }
        };
        assertTrue(CorrectionGain.of(rack(5 * MM), rack(5 * MM + UM), Setting.of(0), Directions.unknown(1),
                List.of(new Stop("near", 100 * MM, 0)), unwanted) instanceof Outcome.Cancelled<?>);
    }
}
