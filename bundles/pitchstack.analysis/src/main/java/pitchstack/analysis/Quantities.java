// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.List;
import java.util.function.Supplier;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.Pitch;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.RotaryScale;
import pitchstack.core.units.Scale;
import pitchstack.model.Axis;
import pitchstack.model.AxisKind;
import pitchstack.model.DisplayUnit;
import pitchstack.model.Positioner;
import pitchstack.model.Stage;

/** The scale of an axis, and typed quantities read on it. */
public final class Quantities {
    /** Reference temperature of lengths on drawings (ISO 1). */
    public static final double REFERENCE_C = 20;
    private static final BigDecimal MILLION = BigDecimal.valueOf(1_000_000);

    private Quantities() {
    }

    /** The unit in which lengths of a positioner are shown. */
    public static LengthUnit unit(Positioner positioner) {
        return positioner.getUnit() == DisplayUnit.INCH ? LengthUnit.INCH : LengthUnit.MM;
    }

    /**
     * The scale of an axis.
     *
     * @throws QuantityException if the rings of a rotary axis have no common division
     */
    public static Scale scale(Positioner positioner, Axis axis) {
        return scale(positioner, axis, false);
    }

    /**
     * The scale of an axis.
     *
     * @param fractions whether inches are shown as fractions where they are such
     * @throws QuantityException if the rings of a rotary axis have no common division
     */
    static Scale scale(Positioner positioner, Axis axis, boolean fractions) {
        if (axis.getKind() == AxisKind.LINEAR) {
            return new LinearScale(unit(positioner), fractions);
        }
        Collection<Long> rings = axis.getStages().stream().map(Stage::getPitch)
                .filter(text -> text != null && !text.isBlank())
                .map(text -> Pitch.parse(text).teethPerTurn()).filter(teeth -> teeth > 0).toList();
        return RotaryScale.dividing(rings.isEmpty() ? List.of(1L) : rings);
    }

    /**
     * The pitch of a stage as drawn, in counts of a scale.
     *
     * @throws QuantityException if the text is missing or cannot be read
     */
    public static long nominalPitch(Stage stage, Scale scale) {
        return Pitch.parse(stage.getPitch() == null ? "" : stage.getPitch()).units(scale);
    }

    /**
     * A pitch as it is today: {@code p (1 + c) (1 + α (t − 20 °C))}, the temperature on linear axes only, rounded
     * once, half to even.
     *
     * @param nominal the pitch as drawn, counts
     * @param stage gives the fitted correction c and the expansion coefficient α
     * @param scale the scale of the axis
     * @param temperatureC today's temperature
     * @throws QuantityException if a number is not finite or the result does not fit
     */
    static long pitchToday(long nominal, Stage stage, Scale scale, double temperatureC) {
        BigDecimal factor = onePlusPpm(stage.getCorrectionPpm()).multiply(expansion(stage, scale, temperatureC));
        return rounded(factor.multiply(BigDecimal.valueOf(nominal)), () -> "The pitch of “" + stage.getName()
                + "” with its correction of " + stage.getCorrectionPpm() + " ppm");
    }

    /**
     * A measured error as it is today: {@code e (1 + α (t − 20 °C))}, as {@link #pitchToday}; the fitted correction is
     * one of the pitch alone.
     *
     * @throws QuantityException if a number is not finite or the result does not fit
     */
    static long errorToday(long error, Stage stage, Scale scale, double temperatureC) {
        return rounded(expansion(stage, scale, temperatureC).multiply(BigDecimal.valueOf(error)),
                () -> "An index error of “" + stage.getName() + "” at " + temperatureC + " °C");
    }

    /** How many times as long a stage is today as at 20 °C; 1 on a rotary axis. */
    private static BigDecimal expansion(Stage stage, Scale scale, double temperatureC) {
        return scale.turn() > 0 ? BigDecimal.ONE
                : onePlusPpm(stage.getExpansionPpmPerK() * (temperatureC - REFERENCE_C));
    }

    private static long rounded(BigDecimal count, Supplier<String> what) {
        try {
            return count.setScale(0, RoundingMode.HALF_EVEN).longValueExact();
        } catch (ArithmeticException tooLarge) {
            throw new QuantityException(what.get() + " is more than the program can hold.");
        }
    }

    private static BigDecimal onePlusPpm(double ppm) {
        if (!Double.isFinite(ppm)) {
            throw new QuantityException("A correction of " + ppm + " ppm is not a number to count with.");
        }
        return BigDecimal.ONE.add(BigDecimal.valueOf(ppm).divide(MILLION));
    }
}
