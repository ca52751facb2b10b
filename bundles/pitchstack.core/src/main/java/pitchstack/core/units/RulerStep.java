// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.units;

import java.math.BigDecimal;
import java.util.function.LongFunction;

/**
 * The divisions of a ruler.
 *
 * @param counts the distance of two numbered ticks, above 0
 * @param parts how many parts the small ticks make of it
 * @param label the text of the tick at so many steps from 0
 */
public record RulerStep(double counts, int parts, LongFunction<String> label) {
    /** Steps of an angle that people read easily, in arc seconds from 1″ to 180°. */
    private static final int[] ARC_SECONDS = {1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800,
        3600, 7200, 18_000, 36_000, 54_000, 108_000, 162_000, 324_000, 648_000};

    /**
     * The finest division whose numbers have room.
     *
     * @param scale the scale of the axis; its unit is that of the ruler
     * @param leastCounts the least distance of two numbers, above 0
     */
    public static RulerStep of(Scale scale, double leastCounts) {
        if (scale instanceof LinearScale linear) {
            return decimal(linear.unit().femtometres(), leastCounts);
        }
        double arcSecond = (double) scale.turn() / RotaryScale.ARC_SECONDS;
        for (int step : ARC_SECONDS) {
            if (step * arcSecond >= leastCounts) {
                return new RulerStep(step * arcSecond, parts(step), k -> angle(k, step));
            }
        }
        return new RulerStep(scale.turn(), 4, k -> "0°");
    }

    /** 1, 2 or 5 times a power of ten of a unit. */
    private static RulerStep decimal(double unitCounts, double leastCounts) {
        int exponent = (int) Math.floor(Math.log10(leastCounts / unitCounts));
        for (int power = exponent; true; power++) {
            for (int times : new int[] {1, 2, 5}) {
                BigDecimal step = BigDecimal.valueOf(times).scaleByPowerOfTen(power);
                double counts = step.doubleValue() * unitCounts;
                if (counts >= leastCounts) {
                    BigDecimal plain = step.scale() < 0 ? step.setScale(0) : step;
                    return new RulerStep(counts, times == 2 ? 4 : times == 5 ? 5 : 10,
                            k -> plain.multiply(BigDecimal.valueOf(k)).toPlainString());
                }
            }
        }
    }

    private static int parts(int arcSeconds) {
        int unit = arcSeconds % 3600 == 0 ? 3600 : arcSeconds % 60 == 0 ? 60 : 1;
        return switch (arcSeconds / unit) {
            case 1 -> unit == 1 ? 5 : 6;
            case 2 -> 4;
            case 15, 45 -> 3;
            case 30, 90, 180 -> 6;
            default -> 5;
        };
    }

    private static String angle(long k, int step) {
        long seconds = Math.floorMod(k * step, RotaryScale.ARC_SECONDS);
        String degrees = seconds / 3600 + "°";
        String minutes = String.format("%02d'", seconds / 60 % 60);
        return step % 3600 == 0 ? degrees : step % 60 == 0 ? degrees + minutes
                : degrees + minutes + String.format("%02d\"", seconds % 60);
    }
}
