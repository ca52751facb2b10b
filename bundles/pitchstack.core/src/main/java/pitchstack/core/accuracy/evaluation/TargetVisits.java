// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import pitchstack.core.stack.Direction;

/**
 * All visits of one target.
 *
 * @param targetM where the carriage was meant to stand
 * @param upM deviations when approached from lower positions, in the order of the runs
 * @param downM deviations when approached from higher positions
 */
public record TargetVisits(double targetM, List<Double> upM, List<Double> downM) {
    /** Copies the lists. */
    public TargetVisits {
        upM = List.copyOf(upM);
        downM = List.copyOf(downM);
    }

    /**
     * Gathers visits by target, in the order of the targets.
     *
     * @throws IllegalArgumentException if a visit does not say from which side it came
     */
    public static List<TargetVisits> gather(List<Visit> visits) {
        TreeMap<Double, TargetVisits> byTarget = new TreeMap<>();
        for (Visit visit : visits) {
            if (visit.direction() == Direction.UNKNOWN) {
                throw new IllegalArgumentException("A visit must say from which side it came");
            }
            byTarget.merge(visit.targetM(), of(visit), TargetVisits::and);
        }
        return List.copyOf(byTarget.values());
    }

    private static TargetVisits of(Visit visit) {
        boolean up = visit.direction() == Direction.FORWARD;
        List<Double> one = List.of(visit.deviationM());
        return new TargetVisits(visit.targetM(), up ? one : List.of(), up ? List.of() : one);
    }

    private TargetVisits and(TargetVisits more) {
        return new TargetVisits(targetM, joined(upM, more.upM), joined(downM, more.downM));
    }

    private static List<Double> joined(List<Double> some, List<Double> more) {
        List<Double> all = new ArrayList<>(some);
        all.addAll(more);
        return all;
    }
}
