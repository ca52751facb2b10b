// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import java.util.Locale;

/** Lengths in sentences. */
final class Millimetres {
    private Millimetres() {
    }

    /** To a hundredth. */
    static String of(double length) {
        return String.format(Locale.ROOT, "%.2f mm", length);
    }
}
