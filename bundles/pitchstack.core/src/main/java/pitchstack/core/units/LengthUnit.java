// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.units;

import java.util.Optional;
import java.util.Set;

/** A unit of length with its exact size in femtometres. */
public enum LengthUnit {
    /** Micrometre. */
    UM("µm", 1_000_000_000L, 2, Set.of("um", "µm", "μm", "micron", "microns")),
    /** Millimetre. */
    MM("mm", 1_000_000_000_000L, 4, Set.of("mm")),
    /** A thousandth of an inch, as the trade calls it. */
    THOU("thou", 25_400_000_000L, 2, Set.of("thou")),
    /** Inch, 25.4 mm exactly (international yard and pound agreement, 1959). */
    INCH("in", 25_400_000_000_000L, 5, Set.of("in", "inch", "inches", "\"", "″"));

    private final String symbol;
    private final long femtometres;
    private final int decimals;
    private final Set<String> spellings;

    LengthUnit(String symbol, long femtometres, int decimals, Set<String> spellings) {
        this.symbol = symbol;
        this.femtometres = femtometres;
        this.decimals = decimals;
        this.spellings = spellings;
    }

    /** The symbol shown after a number. */
    public String symbol() {
        return symbol;
    }

    /** The exact size in femtometres. */
    public long femtometres() {
        return femtometres;
    }

    /** The decimals shown to a person: 0.1 µm in millimetres, a hundredth of a thou in inches. */
    public int decimals() {
        return decimals;
    }

    /** The unit that a person spells so, in any case; empty if there is none. */
    static Optional<LengthUnit> spelled(String text) {
        String t = text.strip().toLowerCase(java.util.Locale.ROOT);
        for (LengthUnit unit : values()) {
            if (unit.spellings.contains(t)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }
}
