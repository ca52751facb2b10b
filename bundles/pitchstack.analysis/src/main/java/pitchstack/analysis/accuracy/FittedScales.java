// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import pitchstack.core.accuracy.fit.Estimate;
import pitchstack.core.accuracy.fit.IndexErrorMap;
import pitchstack.core.accuracy.fit.PitchFit;
import pitchstack.core.accuracy.total.AxisAccuracy;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;
import pitchstack.model.Axis;
import pitchstack.model.IndexError;
import pitchstack.model.MeasurementRun;
import pitchstack.model.Stage;

/**
 * How well corrected pitches and errors of single indices are known. Where a stage names the run its correction came from,
 * that run is fitted anew: it also says how corrections hang together, which the file does not store.
 */
final class FittedScales {
    private static final double PPM = 1e-6;
    /** A stored correction is of a run when it is within this part of its own uncertainty of what the run gives today. */
    private static final double SAME = 0.01;

    private final Axis axis;
    private final AxisSpec spec;
    private final Notes notes;
    private final double[][] covariances;
    private final Set<Integer> known = new TreeSet<>();
    private final Map<Integer, Map<Integer, Double>> mapped = new HashMap<>();
    private double freedom = Double.POSITIVE_INFINITY;

    private FittedScales(Axis axis, AxisSpec spec, Notes notes) {
        this.axis = axis;
        this.spec = spec;
        this.notes = notes;
        covariances = new double[spec.stages().size()][spec.stages().size()];
    }

    static FittedScales of(Axis axis, AxisSpec spec, Notes notes) {
        FittedScales scales = new FittedScales(axis, spec, notes);
        axis.getRuns().forEach(scales::addRun);
        for (int j = 0; j < spec.stages().size(); j++) {
            scales.addStated(j);
            scales.noteUnknownErrors(j);
        }
        return scales;
    }

    /** Nothing where no pitch was fitted. */
    Optional<AxisAccuracy.Fitted> fitted() {
        return known.isEmpty() ? Optional.empty() : Optional.of(new AxisAccuracy.Fitted(covariances, freedom, known));
    }

    /** Standard uncertainties of the errors of single indices of a stage that are known. */
    Map<Integer, Double> mapped(int stage) {
        return mapped.getOrDefault(stage, Map.of());
    }

    private void addRun(MeasurementRun run) {
        Set<Integer> corrected = new TreeSet<>();
        for (int j = 0; j < spec.stages().size(); j++) {
            if (axis.getStages().get(j).getCorrectionRun() == run) {
                corrected.add(j);
            }
        }
        if (corrected.isEmpty()) {
            return;
        }
        AxisFit fit = AxisFit.of(RunReader.read(axis, spec, run), Setting.zero(spec.stages().size()));
        corrected.removeIf(j -> !isOf(fit, j));
        fit.fit().ifPresent(found -> take(found, corrected));
        for (IndexErrorMap map : fit.maps()) {
            if (corrected.contains(map.stage())) {
                map.byIndex().forEach((index, error) -> addMapped(map.stage(), index, error));
            }
        }
    }

    private boolean isOf(AxisFit fit, int stage) {
        double stored = axis.getStages().get(stage).getCorrectionPpm() * PPM;
        boolean same = fit.fit().map(found -> found.correction(stage))
                .filter(now -> Math.abs(now.value() - stored) <= SAME * now.uncertainty() + PPM / 1000).isPresent();
        if (!same) {
            notes.assume(spec.stages().get(stage).title(stage) + ": its correction is not what run “" + fit.run().name()
                    + "” gives today; what the file states of it is taken. Fit the run again.");
        }
        return same;
    }

    private void take(PitchFit fit, Set<Integer> corrected) {
        double[][] found = fit.covariances();
        for (int j : corrected) {
            for (int k : corrected) {
                covariances[j][k] = found[j][k];
            }
            freedom = Math.min(freedom, fit.correction(j).degreesOfFreedom());
        }
        known.addAll(corrected);
    }

    private void addStated(int j) {
        Stage stage = axis.getStages().get(j);
        String title = spec.stages().get(j).title(j);
        if (known.contains(j)) {
            return;
        }
        if (stage.getCorrectionUncertaintyPpm() > 0) {
            covariances[j][j] = Math.pow(stage.getCorrectionUncertaintyPpm() * PPM, 2);
            known.add(j);
            notes.assume(String.format(Locale.ROOT, "%s: its pitch is known to %.1f ppm (1 σ), as the file states, and apart from"
                    + " every other.", title, stage.getCorrectionUncertaintyPpm()));
        } else if (stage.getCorrectionPpm() != 0) {
            notes.assume(title + ": the file corrects its pitch without saying how well that is known; it counts as not measured.");
        }
    }

    private void addMapped(int stage, int index, Estimate error) {
        boolean stored = axis.getStages().get(stage).getIndexErrors().stream().mapToInt(IndexError::getIndex)
                .anyMatch(one -> one == index);
        if (stored) {
            mapped.computeIfAbsent(stage, j -> new HashMap<>()).put(index, error.uncertainty());
        }
    }

    private void noteUnknownErrors(int j) {
        long unknown = axis.getStages().get(j).getIndexErrors().stream()
                .filter(error -> !mapped(j).containsKey(error.getIndex())).count();
        if (unknown > 0) {
            notes.assume(spec.stages().get(j).title(j) + ": nothing says how well the errors of " + unknown
                    + (unknown == 1 ? " index" : " indices") + " are known; the budget takes no credit for them.");
        }
    }
}
