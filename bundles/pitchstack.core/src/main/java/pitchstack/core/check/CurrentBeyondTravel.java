// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import pitchstack.core.plan.Soundness;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;

/** The carriage stands beyond a stop of the travel. Moves can be planned from there, but not back. */
public final class CurrentBeyondTravel implements Check {
    /**
     * How far a position lies beyond a stop.
     *
     * @param stop the position of the stop
     * @param by the distance from it, above 0
     */
    public record Overrun(long stop, long by) { }

    @Override
    public List<Finding> apply(Subject subject) {
        AxisSpec axis = subject.axis();
        return overrun(axis, subject.current()).map(overrun -> finding(axis, subject.current(), overrun)).stream().toList();
    }

    /**
     * How far a setting puts the carriage beyond the nearer stop.
     *
     * @param axis any axis, whatever its numbers
     * @param setting any setting
     * @return empty where it stands between the stops, where there are none, or where the numbers say nothing
     */
    public static Optional<Overrun> overrun(AxisSpec axis, Setting setting) {
        boolean stands = setting.size() == axis.stages().size() && Soundness.problem(axis).isEmpty()
                && IntStream.range(0, setting.size())
                        .allMatch(j -> axis.stages().get(j).rows().meeting().contains(setting.index(j)));
        if (!stands || axis.low().isEmpty() && axis.high().isEmpty()) {
            return Optional.empty();
        }
        return beyond(axis, axis.position(setting));
    }

    /** How far a position lies beyond the nearer stop of an axis. */
    static Optional<Overrun> beyond(AxisSpec axis, long position) {
        long turn = axis.scale().turn();
        return turn > 0 ? round(turn, axis.low().orElse(0), axis.high().orElse(turn - 1), position)
                : along(axis.low().orElse(Long.MIN_VALUE), axis.high().orElse(Long.MAX_VALUE), position);
    }

    /** How far a position on a line lies beyond the nearer of two ends; empty also where they are reversed. */
    static Optional<Overrun> along(long low, long high, long position) {
        if (low > high || low <= position && position <= high) {
            return Optional.empty();
        }
        return Optional.of(position < low ? new Overrun(low, apart(low, position))
                : new Overrun(high, apart(position, high)));
    }

    private static long apart(long upper, long lower) {
        long distance = upper - lower;
        boolean wrapped = distance < 0;
        return wrapped ? Long.MAX_VALUE : distance;
    }

    /** The free arc goes up from the low end to the high one, over 0 where the low one is the larger. */
    static Optional<Overrun> round(long turn, long low, long high, long position) {
        boolean allRound = Math.floorMod(high - low, turn) == turn - 1 || high - low >= turn - 1;
        if (allRound || Math.floorMod(position - low, turn) <= Math.floorMod(high - low, turn)) {
            return Optional.empty();
        }
        long above = Math.floorMod(position - high, turn);
        long below = Math.floorMod(low - position, turn);
        return Optional.of(below < above ? new Overrun(low, below) : new Overrun(high, above));
    }

    private static Finding finding(AxisSpec axis, Setting current, Overrun overrun) {
        String position = axis.scale().format(axis.position(current));
        String stop = axis.scale().format(axis.scale().wrap(overrun.stop()));
        return new Finding("current-beyond-travel", Severity.WARNING, Place.AXIS, position, stop, "The carriage stands at "
                + position + ", " + axis.scale().formatSize(overrun.by()) + " beyond the stop at " + stop
                + "; move it back between the stops, or correct the stop.");
    }
}
