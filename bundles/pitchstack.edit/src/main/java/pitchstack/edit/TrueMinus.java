// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

/** Writes negative numbers with a true minus: see {@link pitchstack.core.units.TrueMinus}. */
public final class TrueMinus {
    private TrueMinus() {
    }

    /** The text with every sign of a negative number as {@code −}; hyphens inside words stay. */
    public static String in(String text) {
        return pitchstack.core.units.TrueMinus.in(text);
    }
}
