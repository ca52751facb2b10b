// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import pitchstack.core.units.Scale;
import pitchstack.model.Axis;
import pitchstack.model.MeasurementRun;
import pitchstack.model.PitchstackPackage.Literals;

/** The facts of a measurement run: when, with what, and how warm it was. */
final class RunProperties {
    private static final String RUN = "Run";
    private static final String INSTRUMENT = "Instrument";
    /** An instrument whose scale is off by more than a hundredth is broken. */
    private static final double MOST_PPM = 10_000;

    private RunProperties() {
    }

    static List<Property> of(Session session, MeasurementRun run) {
        Entries entries = new Entries(run, "the run of " + RunWords.title(run));
        Scale scale = session.analysis((Axis) run.eContainer()).spec().scale();
        return List.of(
                entries.text(Literals.MEASUREMENT_RUN__DATE, "date", "When it was measured.", RUN),
                entries.decimal(Literals.MEASUREMENT_RUN__TEMPERATURE_C, "temperature (°C)",
                        "How warm the device was; the fit brings the pitches to 20 °C.", RUN, -40, 120),
                entries.text(Literals.MEASUREMENT_RUN__NOTE, "note", "Anything worth knowing.", RUN),
                entries.text(Literals.MEASUREMENT_RUN__INSTRUMENT, "instrument", "What it was measured with.", INSTRUMENT),
                entries.size(Literals.MEASUREMENT_RUN__UNCERTAINTY, "reading known to (1 σ)", "How well one reading is known, as "
                        + "a standard uncertainty: half of what the certificate gives for 95 %.", INSTRUMENT, scale, 0),
                entries.decimal(Literals.MEASUREMENT_RUN__INSTRUMENT_SCALE_PPM, "its scale known to (ppm, 1 σ)",
                        "How well the instrument's own scale is known over its length, as a standard uncertainty; all readings "
                                + "share it, and more of them do not help. 0 leaves it out.", INSTRUMENT, 0, MOST_PPM));
    }
}
