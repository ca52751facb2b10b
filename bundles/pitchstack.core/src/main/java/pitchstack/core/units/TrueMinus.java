// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.units;

import java.util.regex.Pattern;

/** Writes negative numbers with a true minus, as wide as the plus, where people read them; files keep the hyphen. */
public final class TrueMinus {
    /** A hyphen before a number that is not the dash of a word or of a date. */
    private static final Pattern SIGN = Pattern.compile("(?<![\\w)\\-])-(?=[\\d.])");

    private TrueMinus() {
    }

    /** The text with every sign of a negative number as {@code −}; hyphens inside words stay. */
    public static String in(String text) {
        return SIGN.matcher(text).replaceAll("−");
    }
}
