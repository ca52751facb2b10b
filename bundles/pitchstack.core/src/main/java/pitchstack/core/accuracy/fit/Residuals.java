// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.accuracy.budget.Coverage;

/** Residuals with the test of each against a fit without it (externally studentized; Cook and Weisberg 1982). */
final class Residuals {
    /** A leverage this near to 1 leaves a residual of rounding only. */
    private static final double NEEDED = 1 - 1e-9;
    private static final double ALARM = 0.05;

    private Residuals() {
    }

    static List<Residual> of(List<Reading> readings, LinearFit fit) {
        double limit = fit.freedom() > 1 ? Coverage.factor(1 - ALARM / readings.size(), fit.freedom() - 1)
                : Double.POSITIVE_INFINITY;
        List<Residual> residuals = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            double leverage = fit.leverages()[i];
            double studentized = leverage >= NEEDED ? Double.NaN
                    : studentized(fit, fit.residuals()[i] / readings.get(i).uncertaintyM(), leverage);
            residuals.add(new Residual(readings.get(i), fit.residuals()[i], leverage, studentized,
                    Math.abs(studentized) > limit));
        }
        return residuals;
    }

    private static double studentized(LinearFit fit, double standardized, double leverage) {
        double square = standardized * standardized / (1 - leverage);
        double others = (fit.chiSquare() - square) / (fit.freedom() - 1);
        return Math.signum(standardized) * Math.sqrt(square / Math.max(0, others));
    }
}
