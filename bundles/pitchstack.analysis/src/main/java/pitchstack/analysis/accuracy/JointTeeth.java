// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.List;
import java.util.OptionalDouble;
import pitchstack.core.accuracy.material.Material;
import pitchstack.core.accuracy.teeth.EffectiveTeeth;
import pitchstack.core.accuracy.teeth.ToothPair;
import pitchstack.core.accuracy.teeth.ToothVariant;
import pitchstack.core.accuracy.total.RowAccuracy;

/**
 * The teeth of a stage as the file has them.
 *
 * @param title of the stage
 * @param pair a tooth against its mate
 * @param variant how they are softened
 * @param below how well the base row is made
 * @param above how well the rider row is made
 * @param preloadN of the file, where it gives one
 * @param friction its coefficient
 * @param base material of the base row
 * @param rider material of the rider row
 * @param assumptions one sentence for everything that the file does not say
 */
public record JointTeeth(String title, ToothPair pair, ToothVariant variant, RowAccuracy below, RowAccuracy above,
        OptionalDouble preloadN, double friction, Material base, Material rider, List<String> assumptions) {
    /** Copies the list. */
    public JointTeeth {
        assumptions = List.copyOf(assumptions);
    }

    /** The scatter of a flank of both rows together, in metres. */
    public double scatterM() {
        return Math.hypot(below.scatterM(), above.scatterM());
    }

    /** The correlation of neighbouring errors of both rows together, from 0 to 1. */
    public double neighbours() {
        double all = scatterM();
        return all == 0 ? 0 : (below.neighbours() * Math.pow(below.scatterM(), 2)
                + above.neighbours() * Math.pow(above.scatterM(), 2)) / (all * all);
    }

    /** How many independent teeth average as well as so many: the variances of the two rows' means add. */
    public double independent(int teeth) {
        double all = Math.pow(scatterM(), 2);
        double mean = Math.pow(below.scatterM(), 2) / EffectiveTeeth.fading(teeth, below.neighbours())
                + Math.pow(above.scatterM(), 2) / EffectiveTeeth.fading(teeth, above.neighbours());
        return mean == 0 ? teeth : all / mean;
    }
}
