// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.evaluation;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * The evaluation of a run after ISO 230-2:2014: every figure of every target and of the axis, in one direction and in both.
 *
 * @param targets in the order they were given
 * @param up figures of the approach from lower positions, where every target was visited so
 * @param down figures of the approach from higher positions, where every target was visited so
 * @param both figures over both directions, where every target was visited from both sides
 */
public record Positioning(List<TargetFigures> targets, Optional<OneWayFigures> up, Optional<OneWayFigures> down,
        Optional<TwoWayFigures> both) {
    /** Visits of a target that the standard asks for, from each side. */
    public static final int STANDARD_VISITS = 5;

    /** Copies the list. */
    public Positioning {
        targets = List.copyOf(targets);
    }

    /**
     * Evaluates a run.
     *
     * @param visits at least one target, each visited not at all or at least twice from each side, and from one at least
     * @throws IllegalArgumentException with a sentence if there are too few
     */
    public static Positioning of(List<TargetVisits> visits) {
        if (visits.isEmpty()) {
            throw new IllegalArgumentException("A run needs at least one target");
        }
        List<TargetFigures> targets = visits.stream().map(Positioning::figures).toList();
        Optional<OneWayFigures> up = oneWay(targets.stream().map(TargetFigures::up).toList());
        Optional<OneWayFigures> down = oneWay(targets.stream().map(TargetFigures::down).toList());
        return new Positioning(targets, up, down,
                up.isPresent() && down.isPresent() ? Optional.of(twoWay(targets)) : Optional.empty());
    }

    private static TargetFigures figures(TargetVisits visits) {
        if (visits.upM().size() == 1 || visits.downM().size() == 1 || visits.upM().size() + visits.downM().size() == 0) {
            throw new IllegalArgumentException("The target at " + visits.targetM() + " m was visited "
                    + visits.upM().size() + " times from below and " + visits.downM().size()
                    + " times from above; a spread needs two visits from the same side");
        }
        return new TargetFigures(visits.targetM(), spread(visits.upM()), spread(visits.downM()));
    }

    private static Optional<Spread> spread(List<Double> visits) {
        return visits.isEmpty() ? Optional.empty() : Optional.of(Spread.of(visits));
    }

    private static Optional<OneWayFigures> oneWay(List<Optional<Spread>> spreads) {
        if (!spreads.stream().allMatch(Optional::isPresent)) {
            return Optional.empty();
        }
        List<Spread> all = spreads.stream().flatMap(Optional::stream).toList();
        return Optional.of(new OneWayFigures(highest(all, Spread::repeatabilityM),
                highest(all, Spread::meanM) - lowest(all, Spread::meanM),
                highest(all, Spread::highM) - lowest(all, Spread::lowM)));
    }

    private static TwoWayFigures twoWay(List<TargetFigures> targets) {
        List<Spread> all = targets.stream().flatMap(t -> Stream.concat(t.up().stream(), t.down().stream())).toList();
        return new TwoWayFigures(highest(targets, t -> Math.abs(t.reversalM())),
                targets.stream().mapToDouble(TargetFigures::reversalM).sum() / targets.size(),
                highest(targets, TargetFigures::repeatabilityM),
                highest(all, Spread::meanM) - lowest(all, Spread::meanM),
                highest(targets, TargetFigures::meanM) - lowest(targets, TargetFigures::meanM),
                highest(all, Spread::highM) - lowest(all, Spread::lowM));
    }

    private static <T> double highest(List<T> all, ToDoubleFunction<T> figure) {
        return all.stream().mapToDouble(figure).max().orElseThrow();
    }

    private static <T> double lowest(List<T> all, ToDoubleFunction<T> figure) {
        return all.stream().mapToDouble(figure).min().orElseThrow();
    }
}
