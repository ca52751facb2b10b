// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * The best ways to one stop: for each of its settings, and each way in which the stages can have moved last, one. One
 * object serves one thread.
 */
final class Front {
    private final List<List<Way>> byChoice;
    private final Turns turns;

    /**
     * @param choices how many settings the stop has
     * @param turns what other last directions would cost at the most
     */
    Front(int choices, Turns turns) {
        this.byChoice = new ArrayList<>(choices);
        this.turns = turns;
        for (int c = 0; c < choices; c++) {
            byChoice.add(new ArrayList<>(1));
        }
    }

    /** Whether a way to a setting with this many faults and this effort could be among the best. */
    boolean wants(int choice, int directions, long faults, long effort) {
        for (Way known : byChoice.get(choice)) {
            if (known.directions() == directions) {
                return known.faults() > faults || known.faults() == faults && known.effort() >= effort;
            }
        }
        return true;
    }

    /**
     * Enters a way, unless one to the same setting with the same last directions is as good.
     *
     * @return whether it is one more than before
     */
    boolean offer(Way way) {
        List<Way> known = byChoice.get(way.choice());
        for (int i = 0; i < known.size(); i++) {
            if (known.get(i).directions() == way.directions()) {
                if (Way.BEST_FIRST.compare(way, known.get(i)) < 0) {
                    known.set(i, way);
                }
                return false;
            }
        }
        return known.add(way);
    }

    /** The ways, best first, without those that another one to the same setting beats whatever follows. */
    List<Way> ways() {
        List<Way> all = new ArrayList<>();
        for (List<Way> known : byChoice) {
            for (Way way : known) {
                if (known.stream().noneMatch(other -> beats(other, way))) {
                    all.add(way);
                }
            }
        }
        all.sort(Way.BEST_FIRST);
        return all;
    }

    /** Other last directions matter once a stage: after its next move they are the same. */
    private boolean beats(Way one, Way other) {
        return one.faults() < other.faults() || one.faults() == other.faults()
                && one.effort() + turns.most(one.directions(), other.directions()) < other.effort();
    }
}
