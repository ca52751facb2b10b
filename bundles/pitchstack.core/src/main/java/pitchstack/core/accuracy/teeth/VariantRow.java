// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

import java.util.List;
import pitchstack.core.accuracy.material.Elasticity;

/**
 * One way to make a tooth, beside others: what it saves in preload and what it costs in strength.
 *
 * @param variant the way
 * @param stiffnessNPerM of a flank along its normal, with its mate
 * @param halfN preload at which half of the flanks bear
 * @param mostN preload at which 84 % bear, one standard deviation
 * @param nearlyAllN preload at which 97.7 % bear, two standard deviations
 * @param allN preload at which all bear, on average
 * @param rootStressPa the largest bending stress in the root of a tooth that bears its part of {@link #mostN}
 */
public record VariantRow(ToothVariant variant, double stiffnessNPerM, double halfN, double mostN, double nearlyAllN,
        double allN, double rootStressPa) {
    private static final double HALF = 0.5;
    private static final double ONE_DEVIATION = 0.841344746;
    private static final double TWO_DEVIATIONS = 0.977249868;

    /**
     * The rows of a comparison, loaded at the pitch line, without friction.
     *
     * @param teeth how many independent teeth are engaged, at least 1
     * @param scatterM of a flank, above 0
     */
    public static List<VariantRow> compare(ToothForm form, Elasticity material, double teeth, double scatterM,
            boolean withBase, List<ToothVariant> variants) {
        return compare(ToothPair.alike(form, material, withBase), teeth, scatterM, variants);
    }

    /**
     * The same for teeth against others; the stress is that of the one that bears more.
     *
     * @param teeth how many independent teeth are engaged, at least 1
     * @param scatterM of a flank, above 0
     */
    public static List<VariantRow> compare(ToothPair pair, double teeth, double scatterM, List<ToothVariant> variants) {
        return variants.stream().map(variant -> row(pair, teeth, scatterM, variant)).toList();
    }

    private static VariantRow row(ToothPair pair, double teeth, double scatterM, ToothVariant variant) {
        double alpha = pair.form().flankAngleRad();
        double stiffness = pair.flankNPerM(variant);
        TwoFlankLaw law = new TwoFlankLaw(teeth, stiffness, scatterM, alpha);
        double most = law.preloadN(ONE_DEVIATION);
        // Fz/(2·N·sin α) along the normal of each flank that bears, cos α of it across the tooth.
        double across = most / (2 * teeth * ONE_DEVIATION * Math.tan(alpha));
        return new VariantRow(variant, stiffness, law.preloadN(HALF), most, law.preloadN(TWO_DEVIATIONS),
                law.fullBearingN(), across * pair.rootStressPaPerN(variant));
    }
}
