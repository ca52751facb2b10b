// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import java.util.List;
import java.util.function.ToIntFunction;
import pitchstack.analysis.Quantities;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Setting;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;
import pitchstack.model.Positioner;

/** What is said about an axis and its unit. */
final class Sayings {
    private Sayings() {
    }

    /** The unit that is meant where none is typed. */
    static String unit(Positioner positioner, Scale scale) {
        return scale.turn() > 0 ? "°" : Quantities.unit(positioner).symbol();
    }

    /** What an axis is called at the beginning of a sentence. */
    static String axis(AxisSpec axis) {
        return axis.name().isBlank() ? "This axis" : "Axis “" + axis.name() + "”";
    }

    /** Where an axis stands in a setting: {@code Axis “Fence” stands at 12.000 in}. */
    static String standing(AxisSpec axis, Setting setting) {
        return axis(axis) + " stands at " + TrueMinus.in(axis.scale().format(axis.position(setting)));
    }

    /**
     * What a distance means: {@code 0.020 mm up from 4.000 mm: to 4.020 mm.}
     *
     * @param scale the scale of the axis
     * @param from where the carriage stands
     * @param to where it shall stand
     */
    static String distance(Scale scale, long from, long to) {
        long way = scale.difference(to, from);
        String size = scale.formatSize(way);
        return (way == 0 ? "No distance" : size + (way > 0 ? " up" : " down")) + " from " + scale.format(from) + ": to "
                + scale.format(to) + ". Up is towards higher positions.";
    }

    /** What to do while no distance is typed. */
    static String distanceInvitation(Scale scale) {
        return "Type how far to move from where the stages stand, such as " + (scale.turn() > 0 ? "0.5 or -30'"
                : scale.equals(new LinearScale(LengthUnit.INCH)) ? "0.010 or -1/64" : "0.02 or -20 µm")
                + ": positive is up, towards higher positions, negative is down.";
    }

    /** What to do while nothing is asked, with an example between the ends of the travel. */
    static String invitation(AxisSpec axis) {
        Scale scale = axis.scale();
        List<String> examples = scale.turn() > 0 ? List.of("12.5 or 12°30'")
                : scale instanceof LinearScale linear && linear.unit() == LengthUnit.INCH
                        ? List.of("37.625 or 37 5/8", "3.625 or 3 5/8", "0.375 or 3/8") : List.of("742.3", "42.3", "4.2", "0.2");
        String such = examples.stream().filter(example -> isWithin(axis, scale.parse(example.split(" ")[0]))).findFirst()
                .map(example -> ", such as " + example).orElse("");
        return "Type a target" + such + ", or pick a saved one, and the moves that reach it are shown here.";
    }

    private static boolean isWithin(AxisSpec axis, long position) {
        return axis.scale().turn() > 0 || position >= Math.max(axis.low().orElse(Long.MIN_VALUE), end(axis, IndexRange::first))
                && position <= Math.min(axis.high().orElse(Long.MAX_VALUE), end(axis, IndexRange::last));
    }

    /** Where the carriage stands with all stages at one end. */
    private static long end(AxisSpec axis, ToIntFunction<IndexRange> index) {
        return axis.position(Setting.of(axis.stages().stream()
                .mapToInt(stage -> index.applyAsInt(stage.rows().indices())).toArray()));
    }
}
