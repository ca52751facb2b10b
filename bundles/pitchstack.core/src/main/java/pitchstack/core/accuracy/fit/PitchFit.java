// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.hipparchus.linear.RealMatrix;
import pitchstack.core.accuracy.budget.Budget;
import pitchstack.core.accuracy.budget.BudgetResult;
import pitchstack.core.accuracy.budget.Contribution;
import pitchstack.core.accuracy.budget.Distribution;

/** The pitch correction of every stage, fitted to a run by weighted least squares with an intercept. */
public final class PitchFit implements FitOutcome {
    private final LinearFit fit;
    private final Design design;
    private final List<StageScale> stages;
    private final FitOptions options;
    private final List<Residual> residuals;
    private final SettingScatter scatter;

    private PitchFit(LinearFit fit, Design design, List<StageScale> stages, FitOptions options, List<Reading> readings) {
        this.fit = fit;
        this.design = design;
        this.stages = stages;
        this.options = options;
        residuals = Residuals.of(readings, fit);
        scatter = SettingScatter.of(residuals, 1 + stages.size(), fit.freedom());
    }

    /**
     * Fits a run. Readings from both sides also give the reversal.
     *
     * @param stages lowest first
     * @param readings at least one, each with an index for every stage
     */
    public static FitOutcome of(List<StageScale> stages, List<Reading> readings, FitOptions options) {
        Identifiability told = Identifiability.of(stages, readings);
        if (!told.isComplete()) {
            return new Undetermined(told);
        }
        Design design = Design.of(stages, readings);
        if (readings.size() <= design.columns()) {
            return new TooFew(readings.size(), design.columns() + 1);
        }
        double[] deviations = readings.stream().mapToDouble(design::deviationM).toArray();
        return new PitchFit(design.problem(readings).fit(deviations), design, List.copyOf(stages), options, readings);
    }

    /** The relative correction of a stage: its pitch is the one given times (1 + this). */
    public Estimate correction(int stage) {
        return estimate(Design.column(stage), options.instrumentScale());
    }

    /** Where the carriage stands with every index at 0. */
    public Estimate datumM() {
        return estimate(0, 0);
    }

    /** How much higher it stands when approached from below than from above, where the run tells. */
    public Optional<Estimate> reversalM() {
        return design.hasReversal() ? Optional.of(estimate(design.reversalColumn(), 0)) : Optional.empty();
    }

    /**
     * How the corrections of two stages hang together, from −1 to 1; the scale of the instrument included, which they
     * share.
     */
    public double correlation(int one, int other) {
        double shared = options.instrumentScale() * options.instrumentScale();
        double covariance = variance(Design.column(one)) * fit.inverse().getEntry(Design.column(one), Design.column(other)) + shared;
        return covariance / (correction(one).uncertainty() * correction(other).uncertainty());
    }

    /** The covariances of the corrections, stages in order; the scale of the instrument included. */
    public double[][] covariances() {
        double shared = options.instrumentScale() * options.instrumentScale();
        RealMatrix corrections = fit.inverse().getSubMatrix(1, stages.size(), 1, stages.size());
        return corrections.scalarMultiply(variance(Design.column(0))).scalarAdd(shared).getData();
    }

    /** What the fit leaves of each reading, in the order of the run. */
    public List<Residual> residuals() {
        return List.copyOf(residuals);
    }

    /** Readings that are farther off than chance explains: look for a miscounted tooth or a slip of the pen. */
    public List<Residual> outliers() {
        return residuals.stream().filter(Residual::outlier).toList();
    }

    /** Readings less fitted numbers. */
    public int freedom() {
        return fit.freedom();
    }

    /** How large residuals are beside the uncertainties of the readings: about 1 where these are right. */
    public double scatterRatio() {
        return fit.residualDeviation();
    }

    /** The probability of residuals as large as these, or larger, if the uncertainties of the readings were right. */
    public double chance() {
        // χ² with ν degrees of freedom is the gamma distribution of shape ν/2 and scale 2.
        return 1 - new GammaDistribution(fit.freedom() / 2.0, 2).cumulativeProbability(fit.chiSquare());
    }

    /** The stages of the fit, lowest first. */
    public List<StageScale> stages() {
        return stages;
    }

    /** What the corrections say of the readings' pitches: all stages in order. */
    public List<Estimate> corrections() {
        return IntStream.range(0, stages.size()).mapToObj(this::correction).toList();
    }

    /** Whether the scatter of the pitches comes from the means of settings, as {@link FitOptions.Scatter} may ask for. */
    public boolean isBetweenSettings() {
        return options.scatter() == FitOptions.Scatter.BETWEEN_SETTINGS && scatter.isTold();
    }

    /** The reversal is told within each setting, everything else between them. */
    private double variance(int column) {
        if (options.scatter() == FitOptions.Scatter.AS_STATED) {
            return 1;
        }
        if (!isBetweenSettings()) {
            return fit.chiSquare() / fit.freedom();
        }
        return isReversal(column) ? scatter.within() : scatter.between();
    }

    private double freedom(int column) {
        if (options.scatter() == FitOptions.Scatter.AS_STATED) {
            return Double.POSITIVE_INFINITY;
        }
        if (!isBetweenSettings()) {
            return fit.freedom();
        }
        return isReversal(column) ? scatter.withinFreedom() : scatter.betweenFreedom();
    }

    private boolean isReversal(int column) {
        return design.hasReversal() && column == design.reversalColumn();
    }

    private Estimate estimate(int column, double shared) {
        double own = Math.sqrt(variance(column)) * fit.knownUncertainty(column);
        List<Contribution> parts = new ArrayList<>(List.of(Contribution.observed("readings", own, freedom(column))));
        if (shared > 0) {
            parts.add(Contribution.believed("scale of the instrument", Distribution.NORMAL, shared));
        }
        BudgetResult both = new Budget(parts).result();
        return new Estimate(fit.coefficients()[column], both.combined(), both.degreesOfFreedom());
    }
}
