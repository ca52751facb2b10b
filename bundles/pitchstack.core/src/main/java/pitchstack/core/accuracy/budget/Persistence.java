// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.budget;

/** Whether an error comes back the same each time, so that measuring can take it out, or differs from time to time. */
public enum Persistence {
    /** The same at every visit of the same setting: a pitch, a row's own teeth. It can be measured and corrected. */
    REPEATS,
    /** Another one at every visit: seating, temperature. It cannot be corrected beforehand. */
    VARIES
}
