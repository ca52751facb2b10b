// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.stack;

/**
 * What moving one stage costs a person, in whole milliseconds so that equal efforts are equal.
 *
 * @param releaseMs to release and clamp the stage again, whatever else is released; at least 0
 * @param perToothMs for each tooth counted, there and back again; at least 0
 * @param reversalMs each time the stage starts to move against its last direction; at least 0
 */
public record EffortCost(long releaseMs, long perToothMs, long reversalMs) {
    /** A cost with nothing for turning round. */
    public EffortCost(long releaseMs, long perToothMs) {
        this(releaseMs, perToothMs, 0);
    }
}
