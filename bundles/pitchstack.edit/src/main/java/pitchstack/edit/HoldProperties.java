// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import pitchstack.core.units.Scale;
import pitchstack.model.MeasurementRun;
import pitchstack.model.PitchstackPackage.Literals;
import pitchstack.model.Stage;

/** What decides how well a stage holds its place: how it was measured, and how its teeth seat. */
final class HoldProperties {
    private static final String MEASURED = "Measured";
    private static final String SEATING = "Seating";
    /** A fit further off than a tenth is a wrong pitch, not a correction. */
    private static final double MOST_PPM = 100_000;
    /** Ten tonnes: more than any clamp on such a device. */
    private static final double MOST_N = 100_000;
    private static final double MOST_FRICTION = 2;

    private HoldProperties() {
    }

    /** What sizes along the travel are read on: a rotary axis's own scale, since the file has no radius. */
    static Scale scale(Stage stage, Scale axis) {
        return axis.turn() > 0 ? axis : Lengths.scale(stage);
    }

    static List<Property> of(Stage stage, Scale axis) {
        Entries entries = new Entries(stage, "“" + stage.getName() + "”");
        Entries corrections = new Entries(stage, "“" + stage.getName() + "”",
                (feature, value, label) -> new TypeCorrection(stage, feature, (Double) value, label));
        Scale scale = scale(stage, axis);
        return List.of(
                corrections.decimal(Literals.STAGE__CORRECTION_PPM, "pitch correction (ppm)", "How much longer the made pitch "
                        + "is than the drawn one; a run in the Measurements view tells.", MEASURED, -MOST_PPM, MOST_PPM),
                corrections.decimal(Literals.STAGE__CORRECTION_UNCERTAINTY_PPM, "correction known to (ppm, 1 σ)",
                        "The standard uncertainty of the correction; 0 where it is not known.", MEASURED, 0, MOST_PPM),
                Entries.derived("correctionRun", "correction from", "The run of measurements that the correction was fitted to.",
                        MEASURED, source(stage)),
                entries.decimal(Literals.STAGE__NEIGHBOUR_CORRELATION, "neighbouring teeth alike",
                        "How alike the errors of neighbouring teeth are: 0 not at all, near 1 almost the same. The more, the "
                                + "less it helps that many teeth share the load.", SEATING, 0, 0.99),
                entries.size(Literals.STAGE__SEAT_SCATTER, "seat scatter (1 σ)", "How far one flank seats off its place from one "
                        + "clamping to the next; empty if it is not known.", SEATING, scale, -1),
                entries.decimal(Literals.STAGE__PRELOAD_N, "preload (N)", "The force that presses the rows together; 0 where it "
                        + "is not known.", SEATING, 0, MOST_N),
                entries.decimal(Literals.STAGE__FRICTION, "friction", "Coefficient of friction of the flanks: dry PLA is near "
                        + "0.7, oiled steel near 0.1; 0 where it is not known.", SEATING, 0, MOST_FRICTION));
    }

    private static String source(Stage stage) {
        MeasurementRun run = stage.getCorrectionRun();
        return run != null ? RunWords.title(run) : stage.getCorrectionPpm() == 0 ? "none" : "typed";
    }
}
