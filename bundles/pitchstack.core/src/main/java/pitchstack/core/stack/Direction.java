// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.stack;

/** Which way a stage moved last. */
public enum Direction {
    /** Not known; turning round is then not charged. */
    UNKNOWN,
    /** Towards higher indices. */
    FORWARD,
    /** Towards lower indices. */
    BACK
}
