// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.total;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.accuracy.thermal.Growth;
import pitchstack.core.stack.Setting;

/**
 * The chain of lengths that grows between datum and carriage: the rows slid along, each for the pitches it counts, and
 * against them the work, where it counts.
 */
public final class GrowthChain {
    private GrowthChain() {
    }

    /** The chain of a setting, for {@link Growth#since20} today and {@link Growth#between} two seasons. */
    public static List<Growth.Part> of(AxisAccuracy axis, Setting setting) {
        List<Growth.Part> chain = new ArrayList<>();
        double whole = 0;
        for (int j = 0; j < axis.stages().size(); j++) {
            StageAccuracy stage = axis.stages().get(j);
            CountedFace face = new CountedFace(stage.rows());
            int index = setting.index(j);
            chain.add(new Growth.Part(stage.pitchM() * face.basePitches(index), stage.base().expansion()));
            chain.add(new Growth.Part(stage.pitchM() * face.riderPitches(index), stage.rider().expansion()));
            whole += stage.pitchM() * index;
        }
        double placed = -whole;
        axis.work().ifPresent(work -> chain.add(new Growth.Part(placed, work)));
        return chain;
    }
}
