// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

/** How a position can be reached within a tolerance, from good to bad. */
public enum Reached {
    /** By a setting whose engaged teeth are all fit. */
    CLEAN,
    /** Only by settings over worn teeth. */
    WORN,
    /** Not at all. */
    NOT;

    private static final Reached[] BY_CODE = values();

    /** The ordinal as a byte, for arrays of many cells. */
    public byte code() {
        return (byte) ordinal();
    }

    /** The literal of a code. */
    public static Reached of(byte code) {
        return BY_CODE[code];
    }
}
