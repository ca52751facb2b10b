// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import pitchstack.core.accuracy.fit.Estimate;
import pitchstack.core.accuracy.fit.IndexErrorMap;
import pitchstack.core.accuracy.fit.PitchFit;
import pitchstack.core.units.Scale;
import pitchstack.model.Axis;
import pitchstack.model.IndexError;
import pitchstack.model.MeasurementRun;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Stage;

/** Writes what a fit says into the stages of an axis. */
public final class Corrections {
    private static final double PPM = 1e-6;
    /** Thousandths of a ppm: a nanometre in a kilometre. */
    private static final int DECIMALS = 3;

    /**
     * What changes in a stage.
     *
     * @param stage which, from 0
     * @param title how sentences name it
     * @param fromPpm correction before
     * @param toPpm correction after
     * @param uncertaintyPpm its standard uncertainty
     * @param mappedIndices how many errors of single indices are written
     */
    public record Change(int stage, String title, double fromPpm, double toPpm, double uncertaintyPpm, int mappedIndices) { }

    private Corrections() {
    }

    /** What {@link #apply} would change. */
    public static List<Change> changes(Axis axis, AxisFit fit, boolean withIndexErrors) {
        PitchFit found = fit.fit().orElseThrow();
        List<Change> changes = new ArrayList<>();
        for (int j = 0; j < fit.run().stages().size(); j++) {
            Estimate correction = found.correction(j);
            changes.add(new Change(j, fit.run().stages().get(j).title(), axis.getStages().get(j).getCorrectionPpm(),
                    ppm(correction.value()), ppm(correction.uncertainty()), withIndexErrors ? mapped(fit, j) : 0));
        }
        return changes;
    }

    private static int mapped(AxisFit fit, int stage) {
        return fit.maps().stream().filter(map -> map.stage() == stage)
                .mapToInt(map -> map.significant().byIndex().size()).sum();
    }

    /**
     * Writes the corrections.
     *
     * @param axis the axis of the fit
     * @param run the run of the fit, in the axis already
     * @param fit one that came off
     * @param withIndexErrors whether errors of single indices that are larger than their scatter are written too; those that
     *     the stage has are then replaced, for they were measured against another pitch
     * @return what has changed
     * @throws java.util.NoSuchElementException if there is no fit
     */
    public static List<Change> apply(Axis axis, MeasurementRun run, AxisFit fit, boolean withIndexErrors) {
        List<Change> changes = changes(axis, fit, withIndexErrors);
        for (Change change : changes) {
            Stage stage = axis.getStages().get(change.stage());
            stage.setCorrectionPpm(change.toPpm());
            stage.setCorrectionUncertaintyPpm(change.uncertaintyPpm());
            stage.setCorrectionRun(run);
            if (withIndexErrors) {
                stage.getIndexErrors().clear();
            }
        }
        if (withIndexErrors) {
            fit.maps().forEach(map -> write(map.significant(), axis, fit.run().spec().scale()));
        }
        return changes;
    }

    private static void write(IndexErrorMap map, Axis axis, Scale scale) {
        map.byIndex().forEach((index, error) -> {
            IndexError entry = PitchstackFactory.eINSTANCE.createIndexError();
            entry.setIndex(index);
            entry.setError(Words.entry(error.value(), scale));
            axis.getStages().get(map.stage()).getIndexErrors().add(entry);
        });
    }

    /** A relative number in ppm, with the decimals that a file keeps. */
    private static double ppm(double relative) {
        return BigDecimal.valueOf(relative / PPM).setScale(DECIMALS, RoundingMode.HALF_EVEN).doubleValue();
    }
}
