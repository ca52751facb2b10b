// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import pitchstack.core.stack.Approach;
import pitchstack.core.stack.Direction;

/**
 * The moves of one stage from where it stands: what each costs, and whether it goes one tooth further and comes back.
 * Going out on either side the cost only grows, but it may start higher on one side than on the other.
 */
final class StageMoves {
    final StageTable table;
    final int from;
    final Direction last;
    private final boolean furtherForward;
    private final boolean furtherBack;
    /** The cost of a move forward but for the teeth between its ends, in milliseconds. */
    final long forwardMs;
    final long backMs;
    final long perToothMs;

    /**
     * @param table the stage
     * @param from where it stands, in its range or not
     * @param last which way it moved last
     * @param approach in which direction a move must end
     */
    StageMoves(StageTable table, int from, Direction last, Approach approach) {
        this.table = table;
        this.from = from;
        this.last = last;
        this.furtherForward = approach == Approach.BACK;
        this.furtherBack = approach == Approach.FORWARD;
        this.perToothMs = table.cost.perToothMs();
        this.forwardMs = start(last == Direction.BACK) + (furtherForward ? further() : 0);
        this.backMs = start(last == Direction.FORWARD) + (furtherBack ? further() : 0);
    }

    private long start(boolean againstLast) {
        return table.cost.releaseMs() + (againstLast ? table.cost.reversalMs() : 0);
    }

    /** One tooth more, turn round, and one tooth back. */
    private long further() {
        return 2 * perToothMs + table.cost.reversalMs();
    }

    /** The effort of moving to an index, in milliseconds. */
    long effort(int to) {
        if (to == from) {
            return 0;
        }
        return to > from ? forwardMs + perToothMs * ((long) to - from) : backMs + perToothMs * ((long) from - to);
    }

    /** The farthest index on the way to another: that one, or one tooth further. */
    int turn(int to) {
        if (to > from && furtherForward) {
            return to + 1;
        }
        return to < from && furtherBack ? to - 1 : to;
    }

    /** Which way the stage moved last once it has moved to an index. */
    Direction lastAfter(int to) {
        if (to == from) {
            return last;
        }
        return furtherBack || to > from && !furtherForward ? Direction.FORWARD : Direction.BACK;
    }

    /** Whether the tooth further that the approach rule needs, if any, may be used. */
    boolean allows(int to) {
        if (!furtherForward && !furtherBack) {
            return true;
        }
        int turn = turn(to);
        return turn == to || table.isUsable(turn);
    }
}
