// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.Optional;
import pitchstack.core.plan.Answer.Nearest;
import pitchstack.core.stack.Approach;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.Scale;

/**
 * Says why a target is out of reach.
 *
 * @param axis the axis that was planned on
 * @param target the wanted position
 * @param tolerance the tolerance that was asked
 * @param nearest the answer
 */
record ReasonWording(AxisSpec axis, long target, long tolerance, Nearest nearest) {
    /** One sentence with the numbers. */
    String sentence() {
        return scale().format(target) + switch (nearest.reason()) {
            case BEYOND_TRAVEL -> beyondTravel();
            case BETWEEN_STEPS -> " lies between " + betweenSteps();
            case NO_MOVE -> " could be set, but not from where the stages stand: " + whyNoMove() + whatCanBeSet();
            case UNUSABLE_TEETH -> " could be set only over teeth that may not be used" + whatCanBeSet();
        } + ".";
    }

    private String beyondTravel() {
        Optional<String> below = text(nearest.below());
        Optional<String> above = text(nearest.above());
        if (below.isPresent() == above.isPresent()) {
            return " is outside the travel" + whatCanBeSet();
        }
        return " is beyond the travel; " + below.map(b -> "the highest position that can be set is " + b)
                .orElseGet(() -> "the lowest position that can be set is " + above.get());
    }

    private String betweenSteps() {
        if (nearest.below().isEmpty() || nearest.above().isEmpty()) {
            return "two steps" + whatCanBeSet();
        }
        PlannedSetting below = nearest.below().get();
        PlannedSetting above = nearest.above().get();
        String down = Wording.size(scale(), below.error());
        String up = Wording.size(scale(), above.error());
        String nearer = Math.abs(below.error()) < Math.abs(above.error()) ? down : up;
        return scale().format(below.position()) + " and " + scale().format(above.position()) + "; "
                + (down.equals(up) ? "both are " : "the nearer is ") + nearer + " away" + besideTolerance(nearer);
    }

    /** How the distance of the nearer position compares with the tolerance, when both are rounded to be read. */
    private String besideTolerance(String distance) {
        if (tolerance == 0) {
            return ", and no error is allowed";
        }
        String allowed = Wording.size(scale(), tolerance);
        return allowed.equals(distance) ? ", just over the tolerance"
                : ", and the tolerance is " + allowed;
    }

    private String whatCanBeSet() {
        Optional<String> below = text(nearest.below());
        Optional<String> above = text(nearest.above());
        if (below.isPresent() && above.isPresent()) {
            return "; the nearest positions that can be set are " + below.get() + " and " + above.get();
        }
        return below.or(() -> above).map(p -> "; the nearest position that can be set is " + p)
                .orElse(mayLackMoves() ? "; nothing at all can be set from there"
                        : "; nothing at all can be set, since every setting stands over teeth that may not be used");
    }

    private boolean mayLackMoves() {
        return hasApproach() || hasLimits();
    }

    private boolean hasApproach() {
        return axis.approach() != Approach.EITHER;
    }

    private boolean hasLimits() {
        return !axis.shiftLimits().isEmpty();
    }

    private String whyNoMove() {
        String limit = "every order of steps breaks a shift limit on the way";
        String tooth = "a stage must come back by one tooth at the end, and the tooth further may not be used";
        return !hasApproach() ? limit : hasLimits() ? tooth + ", or " + limit : tooth;
    }

    private Scale scale() {
        return axis.scale();
    }

    private Optional<String> text(Optional<PlannedSetting> planned) {
        return planned.map(p -> scale().format(p.position()));
    }
}
