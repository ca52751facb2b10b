// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.places;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.Setting;
import pitchstack.core.units.Scale;

/**
 * Walks along an axis from one position that can be reached to the next, outwards from where the carriage stands. Where
 * they lie closer than can be seen apart, the next one that is far enough off is taken. Every mark is a position in
 * reach, and where no mark is within the least distance of another there is none.
 *
 * @param planner of the axis
 * @param at where the stages stand
 * @param apart the least distance of two marks, counts, at least 1
 * @param ended asked after every step whether to end
 */
public record ReachWalk(Planner planner, Setting at, long apart, BooleanSupplier ended) {
    /**
     * Finds the marks of a stretch.
     *
     * @param window offsets from the position of the carriage
     */
    public Dots within(Extent window) {
        long carriage = planner.axis().position(at);
        Side below = new Side(carriage, -1, Math.max(0, -window.to()), -window.from());
        Side above = new Side(carriage, 1, Math.max(0, window.from()), window.to());
        below.walk();
        above.walk();
        List<Long> offsets = new ArrayList<>(below.found);
        Collections.reverse(offsets);
        offsets.addAll(above.found);
        return new Dots(carriage, offsets.stream().mapToLong(Long::longValue).toArray(), apart,
                below.thinned || above.thinned, below.cut || above.cut);
    }

    /** One direction; distances count away from the carriage. */
    private final class Side {
        private final long carriage;
        private final int sign;
        private final double from;
        private final double end;
        private final List<Long> found = new ArrayList<>();
        private boolean thinned;
        private boolean cut;

        Side(long carriage, int sign, double from, double to) {
            this.carriage = carriage;
            this.sign = sign;
            this.from = from;
            long turn = planner.axis().scale().turn();
            this.end = turn == 0 ? to : Math.min(to, turn - 1.0);
        }

        void walk() {
            if (end < from) {
                return;
            }
            // The carriage itself has its pointer, and needs no mark.
            OptionalLong next = next((long) Math.max(1, Math.ceil(from)), from < apart ? apart : (long) from);
            while (next.isPresent() && next.getAsLong() <= end) {
                if (ended.getAsBoolean()) {
                    cut = true;
                    return;
                }
                found.add(sign * next.getAsLong());
                next = next(next.getAsLong() + 1, next.getAsLong() + apart);
            }
        }

        /** The first distance in reach from one on; where it is too near and others follow, from the other on. */
        private OptionalLong next(long least, long apartFrom) {
            if (thinned) {
                return reach(apartFrom);
            }
            OptionalLong nearest = reach(least);
            if (nearest.isPresent() && nearest.getAsLong() < apartFrom && nearest.getAsLong() <= end) {
                thinned = true;
                return reach(apartFrom);
            }
            return nearest;
        }

        private OptionalLong reach(long distance) {
            Scale scale = planner.axis().scale();
            long target = scale.wrap(carriage + sign * distance);
            Answer answer = planner.plan(new PlanRequest(target, 0, at, WornPolicy.ALLOW, 0));
            if (answer instanceof Answer.Reached) {
                return OptionalLong.of(distance);
            }
            Answer.Nearest nearest = (Answer.Nearest) answer;
            return (sign > 0 ? nearest.above() : nearest.below()).map(PlannedSetting::position)
                    .map(position -> sign * (position - target))
                    .map(beyond -> distance + (scale.turn() == 0 ? beyond : Math.floorMod(beyond, scale.turn())))
                    .stream().mapToLong(Long::longValue).findFirst();
        }
    }
}
