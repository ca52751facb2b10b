// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;

/**
 * A way from the start over some stops to a setting of the last of them, and what it comes to.
 *
 * @param before the way to the stop before; null at the start
 * @param stop the stop it ends at, or −1 at the start
 * @param choice which of that stop's settings
 * @param directions a code of which way the stages moved last, as far as that has a cost
 * @param faults stops left out, which weigh more than all others, plus stops on worn teeth that are to be avoided
 * @param effort in milliseconds
 * @param error the errors at all stops together, without sign
 * @param worn over how many worn stages its stops stand, all together
 */
record Way(Way before, int stop, int choice, int directions, long faults, long effort, long error, int worn) {
    /** Fewer faults, then less effort, then smaller errors, then fewer worn stages. */
    static final Comparator<Way> BEST_FIRST = Comparator.comparingLong(Way::faults).thenComparingLong(Way::effort)
            .thenComparingLong(Way::error).thenComparingInt(Way::worn);

    /** The same way, once it has left out a stop. */
    Way leavingOut(long fault) {
        return new Way(before, stop, choice, directions, faults + fault, effort, error, worn);
    }

    /** Whether it has more faults, or as many and more effort, than another. */
    boolean isWorseThan(long otherFaults, long otherEffort) {
        return faults > otherFaults || faults == otherFaults && effort > otherEffort;
    }

    /** The ways to each stop of this way, in order, without the start. */
    Deque<Way> fromStart() {
        Deque<Way> all = new ArrayDeque<>();
        for (Way way = this; way.before != null; way = way.before) {
            all.addFirst(way);
        }
        return all;
    }
}
