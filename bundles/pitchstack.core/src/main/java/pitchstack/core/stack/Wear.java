// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.stack;

/** What teeth are fit for, from good to bad. */
public enum Wear {
    /** Fit. */
    CLEAN,
    /** Usable, but flagged in every answer that uses them. */
    WORN,
    /** Not usable. */
    BARRED;

    /** The worse of the two. */
    public Wear worse(Wear other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
