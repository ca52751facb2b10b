// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pitchstack.core.stack.Setting;

/**
 * The sum of squares of a fit taken apart: what the means of settings stand off it (lack of fit), and what readings stand off
 * the mean of their setting (pure error). Exact where every setting was read as often, and from either side as often.
 *
 * @param between lack-of-fit mean square, in variances of a reading of its stated uncertainty
 * @param betweenFreedom settings less what was fitted between them
 * @param within pure-error mean square
 * @param withinFreedom what is left
 */
record SettingScatter(double between, int betweenFreedom, double within, int withinFreedom) {
    /**
     * Takes a fit apart.
     *
     * @param fittedBetween numbers fitted between settings: the datum and the pitches
     * @param freedom of the fit
     */
    static SettingScatter of(List<Residual> residuals, int fittedBetween, int freedom) {
        Map<Setting, double[]> sums = new HashMap<>();
        double all = 0;
        for (Residual residual : residuals) {
            double weight = 1 / (residual.reading().uncertaintyM() * residual.reading().uncertaintyM());
            double[] sum = sums.computeIfAbsent(residual.reading().setting(), setting -> new double[2]);
            sum[0] += weight * residual.residualM();
            sum[1] += weight;
            all += weight * residual.residualM() * residual.residualM();
        }
        double off = sums.values().stream().mapToDouble(sum -> sum[0] * sum[0] / sum[1]).sum();
        int betweenFreedom = sums.size() - fittedBetween;
        int withinFreedom = freedom - betweenFreedom;
        return new SettingScatter(off / betweenFreedom, betweenFreedom, (all - off) / withinFreedom, withinFreedom);
    }

    /** Whether there are settings to spare and repeats beside. */
    boolean isTold() {
        return betweenFreedom > 0 && withinFreedom > 0;
    }
}
