// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pitchstack.core.accuracy.total.Hold;
import pitchstack.core.accuracy.total.RowAccuracy;
import pitchstack.core.accuracy.total.StageAccuracy;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.units.Scale;
import pitchstack.model.Positioner;
import pitchstack.model.Stage;

/**
 * Reads how well a stage is made and held.
 *
 * @param positioner for its print set-ups
 * @param stage which
 * @param spec the same in numbers
 * @param place of the stage, counted from the lowest, 0
 * @param scale of the axis
 * @param mapped standard uncertainties of measured errors of single indices
 * @param notes where assumptions go
 */
record StageReader(Positioner positioner, Stage stage, StageSpec spec, int place, Scale scale, Map<Integer, Double> mapped,
        Notes notes) {
    /** Reads it. */
    StageAccuracy read() {
        boolean rotary = scale.turn() > 0;
        String title = spec.title(place);
        double pitchM = Si.of(spec.pitch(), scale);
        RowReader base = new RowReader(new RowFacts(positioner, stage, stage.getBaseRow(), title + ", base row", pitchM, rotary,
                notes));
        RowReader rider = new RowReader(new RowFacts(positioner, stage, stage.getRiderRow(), title + ", rider row", pitchM,
                rotary, notes));
        RowAccuracy below = base.read();
        RowAccuracy above = rider.read();
        return new StageAccuracy(title, spec.rows(), pitchM, below, above, seat(title, rotary),
                hold(title, rotary, pitchM, base, rider), mapped);
    }

    private Optional<Hold> hold(String title, boolean rotary, double pitchM, RowReader base, RowReader rider) {
        if (rotary) {
            notes.assume("Preload and friction are left out on a rotary axis: the file has no radius; every flank is taken to"
                    + " bear.");
            return Optional.empty();
        }
        return new HoldReader(stage, title, pitchM, base.material(), rider.material(), notes).read();
    }

    private double seat(String title, boolean rotary) {
        OptionalDouble given = notes.quantity(title + ": the scatter of its seat", stage.getSeatScatter(),
                text -> Words.along(text, rotary));
        if (given.isPresent()) {
            return given.getAsDouble();
        }
        double usual = rotary ? Believed.SEAT_RAD : Believed.SEAT_M;
        notes.assume(title + ": nothing says how a flank seats from time to time; " + Words.size(usual, rotary)
                + " (1 σ) is taken, common practice without a source. A repeat-to-zero test tells.");
        return usual;
    }
}
