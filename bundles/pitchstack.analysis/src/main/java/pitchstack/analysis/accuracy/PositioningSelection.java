// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchstack.core.accuracy.evaluation.Positioning;
import pitchstack.core.accuracy.evaluation.TargetVisits;

/**
 * The targets of a run that ISO 230-2 can be applied to: visited at least twice from a side. A single visit from the other
 * side has no spread and is left out.
 *
 * @param positioning the figures, where any target is left
 * @param kept the places of the targets that are left, in their order
 * @param remarks what was left out and what is missing, in sentences
 */
public record PositioningSelection(Optional<Positioning> positioning, List<Integer> kept, List<String> remarks) {
    /** Selects and evaluates. */
    public static PositioningSelection of(List<TargetVisits> visits) {
        List<TargetVisits> used = new ArrayList<>();
        List<Integer> kept = new ArrayList<>();
        List<String> remarks = new ArrayList<>();
        int single = 0;
        for (int i = 0; i < visits.size(); i++) {
            TargetVisits one = visits.get(i);
            TargetVisits spread = new TargetVisits(one.targetM(), several(one.upM()), several(one.downM()));
            single += one.upM().size() == 1 || one.downM().size() == 1 ? 1 : 0;
            if (spread.upM().size() + spread.downM().size() > 0) {
                used.add(spread);
                kept.add(i);
            }
        }
        if (single > 0) {
            remarks.add(single + (single == 1 ? " position was" : " positions were")
                    + " visited once only from a side; a spread needs two visits, so " + (single == 1 ? "this is" : "these are")
                    + " left out.");
        }
        if (used.isEmpty()) {
            remarks.add("No position was visited twice from the same side, so that ISO 230-2 says nothing. Visit each "
                    + Positioning.STANDARD_VISITS + " times from either side.");
            return new PositioningSelection(Optional.empty(), kept, remarks);
        }
        addShortfalls(used, remarks);
        return new PositioningSelection(Optional.of(Positioning.of(used)), kept, remarks);
    }

    private static List<Double> several(List<Double> visits) {
        return visits.size() > 1 ? visits : List.of();
    }

    private static void addShortfalls(List<TargetVisits> used, List<String> remarks) {
        int fewest = used.stream().mapToInt(one -> Math.min(fewest(one.upM()), fewest(one.downM()))).min().orElseThrow();
        if (fewest < Positioning.STANDARD_VISITS) {
            remarks.add("Some position was visited " + fewest + " times from a side; ISO 230-2 asks for "
                    + Positioning.STANDARD_VISITS + ".");
        }
        boolean oneSided = used.stream().anyMatch(one -> one.upM().isEmpty() || one.downM().isEmpty());
        if (oneSided) {
            remarks.add("Not every position was visited from both sides, so that reversal and the figures of both directions are"
                    + " left out.");
        }
    }

    private static int fewest(List<Double> visits) {
        return visits.isEmpty() ? Integer.MAX_VALUE : visits.size();
    }
}
