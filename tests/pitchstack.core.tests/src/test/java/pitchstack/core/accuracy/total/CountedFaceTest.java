// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.total;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;
import pitchstack.core.Stacks;
import pitchstack.core.stack.RowPair;

/** Which face counts, against the mean over all engaged pairs of teeth placed one by one. */
class CountedFaceTest {
    private static final double BASE = 5.0;
    private static final double RIDER = 4.99;

    /** x = mean of (place of the base tooth − place of the rider tooth on its body) over the engaged pairs. */
    private static double mean(RowPair rows, int index) {
        double sum = 0;
        int count = 0;
        for (int rider = 0; rider < rows.rider().teeth(); rider++) {
            int base = rows.start() + index + rider;
            if (base >= 0 && base < rows.base().teeth()) {
                sum += base * BASE - rider * RIDER;
                count++;
            }
        }
        return sum / count;
    }

    @Test
    void agreesWithTeethPlacedOneByOne() {
        for (long seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            RowPair rows = new RowPair(Stacks.row(10 + random.nextInt(30)), Stacks.row(2 + random.nextInt(20)),
                    random.nextInt(8), 1);
            for (int n = rows.indices().first(); n <= rows.indices().last(); n++) {
                assertEquals(mean(rows, n) - mean(rows, 0), new CountedFace(rows).shiftM(n, BASE, RIDER), 1e-10,
                        "seed " + seed + ", index " + n);
            }
        }
    }

    @Test
    void theRidersPitchCancelsWhileTheSameTeethAreEngaged() {
        CountedFace face = new CountedFace(new RowPair(Stacks.row(100), Stacks.row(20), 0, 1));
        assertEquals(0, Math.abs(face.riderPitches(80)));
        assertEquals(80, face.basePitches(80));
        // One tooth over the end: 19 of 20 engaged, their mean half a tooth lower.
        assertEquals(0.5, face.riderPitches(81));
        assertEquals(80.5, face.basePitches(81));
    }
}
