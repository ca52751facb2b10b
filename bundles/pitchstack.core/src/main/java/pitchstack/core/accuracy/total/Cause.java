// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.total;

import java.util.Arrays;
import java.util.Optional;
import pitchstack.core.accuracy.budget.Contribution;

/** What a line of a setting's budget stands for, and the model behind its number. */
public enum Cause {
    /** A pitch fitted to a run. */
    FITTED_PITCH("Fitted pitch of ", Per.PITCH, "Weighted least squares of a run of readings, with an intercept; the"
            + " uncertainty is that of the fitted pitch, together with the scale of the instrument, over the way counted."),
    /** What is believed of a base row. */
    BASE_ROW("Base row of ", Per.PITCH, "An index counts the pitch of the long face slid along. Of a grade: two points of the rack"
            + " lie anywhere within half its total deviation each (F/√6), or every pitch is off by its tolerance the same way"
            + " (n·f/√3), whichever is less. Of a print: its scale is off by the same part all along."),
    /** What is believed of a rider row. */
    RIDER_ROW("Rider row of ", Per.PITCH, "The rider's own pitch counts only as far as other teeth of it are engaged than at index"
            + " 0, which happens where it hangs over an end."),
    /** The errors of single teeth. */
    TEETH("Teeth of ", Per.RESULT, "Elastic averaging: the position is the mean over the flanks that bear, so errors of single teeth"
            + " average with the root of their number; teeth engaged at both ends of the way cancel."),
    /** A measured error of the index. */
    MAPPED("Mapped error of ", Per.RESULT, "The error of this index was read more than once and is corrected; its uncertainty is"
            + " that of the mean of those readings."),
    /** Seating. */
    SEAT("Seat of ", Per.RESULT, "Where flanks seat from time to time, averaged over the flanks that bear: s/√(2N)."),
    /** Friction. */
    FRICTION("Friction of ", Per.RESULT, "Friction can hold a row that far to either side of its seat, anywhere alike: the statics"
            + " of a wedge over the stiffness of the flanks that bear."),
    /** The temperature. */
    TEMPERATURE("Temperature", Per.KELVIN, "Growth of the rows slid along, less that of the work, for what is not known of the"
            + " temperature."),
    /** A coefficient of expansion. */
    EXPANSION("Expansion of ", Per.PER_KELVIN, "What is not known of a coefficient of expansion, over the length of that material"
            + " and the temperature above 20 °C."),
    /** A coefficient of expansion and the temperature together. */
    SECOND_ORDER("Expansion × temperature, ", Per.PITCH, "What is not known of a coefficient of expansion times what is not known"
            + " of the temperature, over the length of that material: all that is left at 20 °C (JCGM 100, note of 5.1.2)."),
    /** The datum. */
    DATUM("Datum", Per.RESULT, "How well the position of all indices at 0 is known, as the file states.");

    /** What a sensitivity is for one of. */
    public enum Per {
        /** Of the result's own unit. */
        RESULT,
        /** Of a relative error of a pitch, or of the result's own unit where a grade says it. */
        PITCH,
        /** Of a kelvin. */
        KELVIN,
        /** Of a relative growth for each kelvin. */
        PER_KELVIN
    }

    private final String words;
    private final Per per;
    private final String model;

    Cause(String words, Per per, String model) {
        this.words = words;
        this.per = per;
        this.model = model;
    }

    /** The cause of a line of {@link SettingBudget}, by its name; nothing for one from elsewhere. */
    public static Optional<Cause> of(Contribution line) {
        return Arrays.stream(values()).filter(cause -> line.name().startsWith(cause.words)).findFirst();
    }

    /** The name of a line. */
    String name(String what) {
        return words + what;
    }

    /** What the sensitivity is for one of. */
    public Per per() {
        return per;
    }

    /** The model behind the number, in a sentence or two. */
    public String model() {
        return model;
    }
}
