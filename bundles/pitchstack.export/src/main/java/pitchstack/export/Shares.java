// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.math.BigDecimal;
import java.math.RoundingMode;
import pitchstack.core.coverage.CoverageSummary;
import pitchstack.core.coverage.Reached;

/** Shares as people read them; a small part is not called nothing, nor a large one everything. */
public final class Shares {
    private static final BigDecimal ALL = BigDecimal.valueOf(100);
    private static final int DECIMALS = 2;

    private Shares() {
    }

    /** How much of the travel is reached in one way: {@code 3.38 %}. */
    public static String of(CoverageSummary summary, Reached reached) {
        return of(switch (reached) {
            case CLEAN -> summary.clean();
            case WORN -> summary.worn();
            case NOT -> summary.not();
        }, summary.travel());
    }

    /**
     * A part of a whole in per cent, to two decimals; {@code less than 0.01 %} and {@code more than 99.99 %} where
     * rounding would say 0 or 100 and that is not so.
     *
     * @param part at least 0
     * @param whole at least {@code part}; where it is 0, so is the share
     */
    public static String of(long part, long whole) {
        if (part == 0 || part == whole) {
            return (part == 0 ? 0 : 100) + " %";
        }
        BigDecimal share = BigDecimal.valueOf(part).multiply(ALL)
                .divide(BigDecimal.valueOf(whole), DECIMALS, RoundingMode.HALF_EVEN);
        BigDecimal least = BigDecimal.ONE.movePointLeft(DECIMALS);
        if (share.signum() == 0) {
            return "less than " + least + " %";
        }
        return share.compareTo(ALL) == 0 ? "more than " + ALL.subtract(least) + " %" : share + " %";
    }
}
