// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;

/** Texts of positions and tolerances as a file keeps them: with their unit, and reading as the same count again. */
public final class QuantityText {
    /** A femtometre is the last of fifteen decimals of a metre, or a little below that of so many of an inch. */
    private static final int MOST_DECIMALS = 15;

    private QuantityText() {
    }

    /** A count in the shortest of our spellings that reads as exactly this count: as it is shown, or with more decimals. */
    public static String of(long count, Scale scale) {
        List<String> spellings = new ArrayList<>(List.of(scale.format(count)));
        if (scale instanceof LinearScale linear) {
            BigDecimal value = BigDecimal.valueOf(count)
                    .divide(BigDecimal.valueOf(linear.unit().femtometres()), MOST_DECIMALS, RoundingMode.HALF_EVEN);
            spellings.add(value.stripTrailingZeros().toPlainString() + " " + linear.unit().symbol());
        }
        String exact = scale.decimal(count) + (scale.turn() == 0 ? " mm" : "°");
        return spellings.stream().filter(text -> reads(text, count, scale)).findFirst().orElse(exact);
    }

    private static boolean reads(String text, long count, Scale scale) {
        try {
            return scale.parse(text) == count;
        } catch (QuantityException e) {
            return false;
        }
    }
}
