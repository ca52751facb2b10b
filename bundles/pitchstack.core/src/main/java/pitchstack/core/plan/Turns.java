// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.Arrays;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Directions;

/**
 * Codes which way the stages moved last in one number, as far as it can cost something: a stage that turns round for
 * nothing has no part in it.
 */
final class Turns {
    private static final Direction[] DIRECTIONS = Direction.values();
    /** By stage: what turning round costs. */
    private final long[] reversalMs;
    /** By stage: the weight of its direction in the code, 0 where it has no part. */
    private final int[] weight;

    /** The codes for the stages of an axis. */
    Turns(StageTable[] tables) {
        reversalMs = Arrays.stream(tables).mapToLong(table -> table.cost.reversalMs()).toArray();
        weight = new int[tables.length];
        int next = 1;
        for (int j = 0; j < weight.length; j++) {
            if (reversalMs[j] > 0) {
                weight[j] = next;
                next *= DIRECTIONS.length;
            }
        }
    }

    /** The code of some directions. */
    int code(Directions directions) {
        int code = 0;
        for (int j = 0; j < weight.length; j++) {
            code += weight[j] * directions.of(j).ordinal();
        }
        return code;
    }

    /** The code of the directions after a move to a setting. */
    int codeAfter(Moves moves, int[] to) {
        int code = 0;
        for (int j = 0; j < weight.length; j++) {
            code += weight[j] == 0 ? 0 : weight[j] * moves.stage(j).lastAfter(to[j]).ordinal();
        }
        return code;
    }

    /** Directions with a code; unknown for the stages that have no part in it. */
    Directions directions(int code) {
        Direction[] directions = new Direction[weight.length];
        for (int j = 0; j < weight.length; j++) {
            directions[j] = weight[j] == 0 ? Direction.UNKNOWN : DIRECTIONS[code / weight[j] % DIRECTIONS.length];
        }
        return Directions.of(directions);
    }

    /** The most by which the same moves can cost more after the one code than after the other. */
    long most(int one, int other) {
        long most = 0;
        for (int j = 0; j < weight.length; j++) {
            boolean differ = weight[j] > 0 && one / weight[j] % DIRECTIONS.length != other / weight[j] % DIRECTIONS.length;
            most += differ ? reversalMs[j] : 0;
        }
        return most;
    }
}
