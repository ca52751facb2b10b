// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

/**
 * What a plan that is already known comes to, so that no way that is worse need be followed.
 *
 * @param faults as {@link Way#faults}
 * @param effort in milliseconds
 */
record Limit(long faults, long effort) {
    /** Nothing is known yet. */
    static final Limit NONE = new Limit(Long.MAX_VALUE, Long.MAX_VALUE);

    static Limit of(Way way) {
        return new Limit(way.faults(), way.effort());
    }
}
