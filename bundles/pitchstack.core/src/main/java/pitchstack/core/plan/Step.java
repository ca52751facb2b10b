// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import pitchstack.core.stack.Direction;

/**
 * A change of one stage's index.
 *
 * @param stage the stage, counted from the lowest, 0
 * @param from the index before
 * @param to the index after, another one
 * @param kind what it is for
 */
public record Step(int stage, int from, int to, Kind kind) {
    /** What a step is for. */
    public enum Kind {
        /** It takes the stage to its place. */
        DIRECT,
        /** It takes the stage a part of its way, since other stages must move before a limit lets it go on. */
        PARTWAY,
        /** It takes the stage one tooth past its place, so that it can come back in the direction asked for. */
        FURTHER,
        /** It takes the stage back that one tooth to its place; it follows a step of the kind before. */
        RETURN
    }

    /** A step that takes a stage to its place. */
    public Step(int stage, int from, int to) {
        this(stage, from, to, Kind.DIRECT);
    }

    /** Teeth moved, positive towards higher positions of the stage. */
    public int teeth() {
        return to - from;
    }

    /** Which way it goes. */
    public Direction direction() {
        return to > from ? Direction.FORWARD : Direction.BACK;
    }
}
