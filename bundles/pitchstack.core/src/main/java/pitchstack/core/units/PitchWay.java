// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.units;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A way in which people give a pitch: what its number counts. */
public enum PitchWay {
    /** A spacing in millimetres. */
    MM("mm", PitchSystem.SPACING, LengthUnit.MM),
    /** A spacing in inches. */
    INCH("in", PitchSystem.SPACING, LengthUnit.INCH),
    /** Module m, in millimetres. */
    MODULE("module", PitchSystem.MODULE, null),
    /** Diametral pitch. */
    DP("DP", PitchSystem.DIAMETRAL_PITCH, null),
    /** Circular pitch in millimetres. */
    CP_MM("mm CP", PitchSystem.CIRCULAR_PITCH, LengthUnit.MM),
    /** Circular pitch in inches. */
    CP_INCH("in CP", PitchSystem.CIRCULAR_PITCH, LengthUnit.INCH),
    /** Teeth in a turn. */
    PER_TURN("per turn", PitchSystem.TEETH_PER_TURN, null),
    /** An angle in degrees. */
    DEGREES("°", PitchSystem.SPACING, null);

    /** A number alone, as a decimal or a fraction. */
    private static final Pattern NUMBER = Pattern.compile("[-−+]?[0-9][0-9.,/ ]*");
    private static final Pattern WITH_UNIT = Pattern.compile("(.*?)\\s*([a-zµμ\"″°]+)");

    private final String label;
    private final PitchSystem system;
    private final LengthUnit unit;

    PitchWay(String label, PitchSystem system, LengthUnit unit) {
        this.label = label;
        this.system = system;
        this.unit = unit;
    }

    /**
     * A pitch taken apart.
     *
     * @param number the number, or all of the text where it is of another kind, such as an angle with minutes
     * @param way what the number counts
     */
    public record Parts(String number, PitchWay way) { }

    /** What is written beside the number. */
    public String label() {
        return label;
    }

    /** The ways that belong to an axis. */
    public static List<PitchWay> of(Scale scale) {
        boolean rotary = scale.turn() > 0;
        return Arrays.stream(values()).filter(way -> rotary == (way == PER_TURN || way == DEGREES)).toList();
    }

    /**
     * Takes a pitch apart.
     *
     * @param text as typed; without a unit it counts the unit of the axis
     * @param scale the scale of its axis
     * @return the parts; empty where the text is no number in one of the ways
     */
    public static Optional<Parts> split(String text, Scale scale) {
        if (text.isBlank()) {
            return Optional.empty();
        }
        Pitch pitch = Pitch.parse(text);
        Matcher m = WITH_UNIT.matcher(pitch.value().toLowerCase(Locale.ROOT));
        boolean named = m.matches();
        String number = named ? m.group(1) : pitch.value();
        Optional<LengthUnit> unit = named ? LengthUnit.spelled(m.group(2)) : shown(scale);
        boolean degrees = scale.turn() > 0 && (!named || m.group(2).equals("°"));
        return of(scale).stream().filter(way -> way.system == pitch.system() && NUMBER.matcher(number).matches()
                        && (way == DEGREES ? degrees : way.unit == null ? !named : unit.filter(way.unit::equals).isPresent()))
                .findFirst().map(way -> new Parts(number, way));
    }

    private static Optional<LengthUnit> shown(Scale scale) {
        return scale instanceof LinearScale linear ? Optional.of(linear.unit()) : Optional.empty();
    }

    /**
     * A pitch put together.
     *
     * @param typed a number, or a whole pitch, which is left as it is
     */
    public String join(String typed) {
        String number = typed.strip();
        if (!NUMBER.matcher(number).matches()) {
            return number;
        }
        return this == MODULE ? label + " " + number : this == DEGREES ? number + label : number + " " + label;
    }
}
