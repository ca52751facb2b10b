// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A tooth spacing in the system in which it was given.
 *
 * @param system how it is given
 * @param value the number, with a unit where the system takes one, as typed
 */
public record Pitch(PitchSystem system, String value) {
    /** π to 50 digits (OEIS A000796): a rounding far below a femtometre after any number of teeth. */
    private static final BigDecimal PI = new BigDecimal("3.1415926535897932384626433832795028841971693993751");
    private static final MathContext CONTEXT = new MathContext(50);
    private static final Pattern MODULE = Pattern.compile("(?:module|mod)\\s*(.+)|(.+?)\\s*(?:module|mod)");
    private static final Pattern DIAMETRAL = Pattern.compile("dp\\s*(.+)|(.+?)\\s*dp");
    private static final Pattern CIRCULAR = Pattern.compile("cp\\s*(.+)|(.+?)\\s*cp");
    private static final Pattern PER_TURN = Pattern.compile("(\\d+)\\s*(?:teeth\\s*)?(?:/|per)\\s*turn");

    /**
     * Reads a pitch: {@code 4.9 mm}, {@code 1/4 in CP}, {@code module 1}, {@code 24 DP}, {@code 360 per turn},
     * {@code 1°01'}.
     *
     * @param text the pitch as typed; a bare number is a spacing in the unit of the axis
     * @return the pitch; whether its value can be read shows in {@link #units}
     * @throws QuantityException if nothing was typed
     */
    public static Pitch parse(String text) {
        String t = text.strip().toLowerCase(Locale.ROOT);
        if (t.isEmpty()) {
            throw new QuantityException("A pitch is missing; write it like 5 mm, 1/4 in CP, module 1 or 24 DP.");
        }
        Matcher m = PER_TURN.matcher(t);
        if (m.matches()) {
            return new Pitch(PitchSystem.TEETH_PER_TURN, m.group(1));
        }
        m = MODULE.matcher(t);
        if (m.matches()) {
            return new Pitch(PitchSystem.MODULE, either(m));
        }
        m = DIAMETRAL.matcher(t);
        if (m.matches()) {
            return new Pitch(PitchSystem.DIAMETRAL_PITCH, either(m));
        }
        m = CIRCULAR.matcher(t);
        return m.matches() ? new Pitch(PitchSystem.CIRCULAR_PITCH, either(m)) : new Pitch(PitchSystem.SPACING, t);
    }

    private static String either(Matcher m) {
        return (m.group(1) != null ? m.group(1) : m.group(2)).strip();
    }

    /**
     * The spacing on a scale, rounded once, half to even: on a linear axis to 0.5 fm, which is 0.01 nm after 20 000
     * teeth.
     *
     * @param scale the scale of the axis
     * @return counts a tooth; zero and below are returned as they are, for a check to find
     * @throws QuantityException if the value cannot be read or its system does not belong on the axis
     */
    public long units(Scale scale) {
        boolean rotary = scale instanceof RotaryScale;
        if (rotary != (system == PitchSystem.TEETH_PER_TURN) && system != PitchSystem.SPACING) {
            throw new QuantityException(rotary
                    ? "A rotary axis takes its pitch as teeth per turn, like 360 per turn, or as an angle, like 1°01'."
                    : "Teeth per turn belong to a rotary axis; give this pitch as a length, a module or a DP.");
        }
        return switch (system) {
            case SPACING, CIRCULAR_PITCH -> scale.parse(value);
            case MODULE -> millimetres(PI.multiply(Ratio.parse(value).toDecimal(CONTEXT)));
            case DIAMETRAL_PITCH -> diametral(Ratio.parse(value));
            case TEETH_PER_TURN -> perTurn(scale.turn());
        };
    }

    /** Whole teeth in a turn, for the choice of a rotary scale; 0 where the pitch is given in another system. */
    public long teethPerTurn() {
        return system == PitchSystem.TEETH_PER_TURN ? new BigInteger(value).min(BigInteger.valueOf(Integer.MAX_VALUE))
                .longValueExact() : 0;
    }

    private long perTurn(long turn) {
        long teeth = teethPerTurn();
        return teeth == 0 ? 0
                : new Ratio(BigInteger.valueOf(turn), BigInteger.valueOf(teeth)).times(BigInteger.ONE);
    }

    private static long diametral(Ratio dp) {
        if (dp.isNotPositive()) {
            throw new QuantityException("A diametral pitch must be above 0.");
        }
        BigDecimal inches = PI.divide(dp.toDecimal(CONTEXT), CONTEXT);
        return Ratio.toLong(inches.multiply(BigDecimal.valueOf(LengthUnit.INCH.femtometres())));
    }

    private static long millimetres(BigDecimal mm) {
        return Ratio.toLong(mm.multiply(BigDecimal.valueOf(LengthUnit.MM.femtometres())));
    }
}
