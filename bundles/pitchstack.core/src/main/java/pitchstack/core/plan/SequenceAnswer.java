// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** What the planner made of a list of stops. */
public sealed interface SequenceAnswer {
    /**
     * A plan.
     *
     * @param legs every stop once, in the order of the moves; one that is left out has no move
     * @param effortMs the effort of all moves together, in milliseconds
     * @param oneByOne the plan of the same stops in the given order one by one, to compare with; empty for one that is
     *     planned so itself, and for each stop from the start
     * @param leastMs what every plan that leaves out no more stops costs at the least; equal to the effort where no
     *     order is cheaper. Empty where nothing was looked for, or where stops had to be left out for others
     */
    record Planned(List<Leg> legs, long effortMs, Optional<Planned> oneByOne, OptionalLong leastMs)
            implements SequenceAnswer {
        /** Copies the list. */
        public Planned {
            legs = List.copyOf(legs);
        }

        /** How many stops are left out. */
        public int leftOut() {
            return (int) legs.stream().filter(leg -> leg.move().isEmpty()).count();
        }

        /** Whether it is known that no plan of the kind that was asked for costs less. */
        public boolean isLeast() {
            return leastMs.isPresent() && leastMs.getAsLong() == effortMs;
        }

        /**
         * What the plan saves against planning one by one, in milliseconds; empty where there is nothing to compare
         * with, or one by one leaves out more stops.
         */
        public OptionalLong savedMs() {
            return oneByOne.isPresent() && oneByOne.get().leftOut() == leftOut()
                    ? OptionalLong.of(oneByOne.get().effortMs - effortMs) : OptionalLong.empty();
        }
    }

    /**
     * It would take more than the numbers or the memory allow.
     *
     * @param sentence why, and what to change
     */
    record Refused(String sentence) implements SequenceAnswer { }

    /** It was cancelled. */
    record Cancelled() implements SequenceAnswer { }
}
