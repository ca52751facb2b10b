// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.stack;

/**
 * In which direction every stage that moves must end its move, so that its flanks always seat from the same side. A
 * stage that moves the other way goes one tooth further and comes back.
 */
public enum Approach {
    /** As it comes. */
    EITHER,
    /** Towards higher indices. */
    FORWARD,
    /** Towards lower indices. */
    BACK
}
