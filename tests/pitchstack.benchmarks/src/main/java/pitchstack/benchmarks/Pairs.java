// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.WornRange;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.Pitch;

/**
 * A rack under pairs of printed stages of which the upper counts backwards, each pair tied to a net shift. The rack costs 4 s
 * to release, a printed stage 2 s, every tooth 1 s.
 *
 * @param rackPitch the pitch of the rack
 * @param rackPositions its indices, from 0
 * @param positions the indices of every printed stage, about 0
 * @param shift how far a pair may stand off
 * @param pitches of the printed stages, two a pair
 */
record Pairs(String rackPitch, int rackPositions, int positions, String shift, List<String> pitches) {
    private static final LinearScale SCALE = new LinearScale(LengthUnit.MM);
    private static final int RACK_RIDER = 20;
    private static final int PRINTED_RIDER = 10;

    /** The same with another rack length. */
    Pairs withRack(int teeth) {
        return new Pairs(rackPitch, teeth, positions, shift, pitches);
    }

    /** The same with other printed stages. */
    Pairs withPositions(int count) {
        return new Pairs(rackPitch, rackPositions, count, shift, pitches);
    }

    /** How far the rack goes, in femtometres. */
    long rackTravel() {
        return Pitch.parse(rackPitch).units(SCALE) * (rackPositions - 1);
    }

    /**
     * The axis.
     *
     * @param name its name
     * @param travel where its upper stop is, in femtometres; the lower is at 0
     * @param marks on the rack
     */
    AxisSpec axis(String name, long travel, List<WornRange> marks) {
        List<StageSpec> stages = new ArrayList<>();
        List<ShiftLimit> limits = new ArrayList<>();
        stages.add(stage(rackPitch, 0, rackPositions, RACK_RIDER, marks, new EffortCost(4000, 1000)));
        for (int j = 0; j < pitches.size(); j++) {
            boolean back = j % 2 == 1;
            stages.add(stage(pitches.get(j), -positions / 2 + (back ? 1 : 0), positions, PRINTED_RIDER, List.of(),
                    new EffortCost(2000, 1000)));
            if (back) {
                limits.add(new ShiftLimit(j, j + 1, SCALE.parse(shift)));
            }
        }
        return new AxisSpec(name, SCALE, stages, 0, OptionalLong.of(0), OptionalLong.of(travel), limits, Problem.TOLERANCE,
                OptionalLong.empty());
    }

    private static StageSpec stage(String pitch, int first, int positions, int riderTeeth, List<WornRange> marks,
            EffortCost cost) {
        long counts = Pitch.parse(pitch).units(SCALE);
        RowPair rows = new RowPair(new RowSpec(positions + riderTeeth - 1, marks), new RowSpec(riderTeeth, List.of()),
                -first, riderTeeth);
        return new StageSpec("", Source.PRINTED, counts, counts, rows, cost);
    }
}
