// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import java.util.Random;
import java.util.TreeMap;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexErrors;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.StageSpec;

/** The same coverage of 2 m, with an error of up to 20 µm either way at every index of the rack. */
public class CoverageMapOfMeasuredRack extends CoverageMap {
    private static final long LARGEST = 20_000_000_000L;
    private static final long SEED = 314;

    @Override
    AxisSpec axis() {
        AxisSpec axis = super.axis();
        StageSpec rack = axis.stages().get(0);
        IndexRange indices = rack.rows().indices();
        Random random = new Random(SEED);
        TreeMap<Integer, Long> errors = new TreeMap<>();
        for (int n = indices.first(); n <= indices.last(); n++) {
            errors.put(n, random.nextLong(-LARGEST, LARGEST + 1));
        }
        return axis.withStage(0, rack.withErrors(IndexErrors.of(errors)));
    }
}
