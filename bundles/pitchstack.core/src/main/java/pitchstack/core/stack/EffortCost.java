// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.stack;

/**
 * What moving one stage costs a person, in whole milliseconds so that equal efforts are equal.
 *
 * @param releaseMs to release and clamp the stage again, whatever else is released; at least 0
 * @param perToothMs for each tooth counted; at least 0
 */
public record EffortCost(long releaseMs, long perToothMs) {
    /** The effort of moving by a number of teeth: nothing where the stage stays. */
    public long of(int teeth) {
        return teeth == 0 ? 0 : releaseMs + perToothMs * Math.abs((long) teeth);
    }
}
