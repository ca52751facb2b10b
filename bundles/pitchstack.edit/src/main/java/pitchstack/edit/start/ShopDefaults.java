// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit.start;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.QuantityException;
import pitchstack.edit.NewStack;
import pitchstack.model.AxisKind;
import pitchstack.model.DisplayUnit;
import pitchstack.model.Positioner;

/**
 * What a person has chosen for all files. It is kept with the person's settings, and handed to whoever needs it; no check
 * and no plan looks at it.
 *
 * @param unit of new files
 * @param fractions whether inches are shown as fractions where they are such
 * @param costs of new stages
 * @param theme colours of the window
 * @param lineWidth of the printer, with its unit
 * @param bed how long a row the printer can print in one piece, with its unit
 */
public record ShopDefaults(DisplayUnit unit, boolean fractions, StageCosts costs, Theme theme, String lineWidth,
        String bed) {
    /** Where a window keeps them. */
    public static final String NODE = "pitchstack.shop";
    private static final String USUAL_LINE = "0.4 mm";
    /** The side of a bed of common printers; common practice, no source. */
    private static final String USUAL_BED = "220 mm";
    private static final LinearScale MM = new LinearScale(LengthUnit.MM);
    private static final long SHORTEST_BED = 50 * LengthUnit.MM.femtometres();
    private static final long LONGEST_BED = 2_000 * LengthUnit.MM.femtometres();
    private static final double LONGEST_SECONDS = 3600;

    /** Colours of the window. */
    public enum Theme {
        /** Those of the system. */
        SYSTEM,
        /** Dark on light. */
        LIGHT,
        /** Light on dark. */
        DARK
    }

    /** What is kept. */
    public enum Key {
        /** {@code MM} or {@code INCH}. */
        UNIT("unit"),
        /** {@code true} or {@code false}. */
        FRACTIONS("fractions"),
        /** Seconds. */
        RELEASE("releaseSeconds"),
        /** Seconds. */
        PER_TOOTH("perToothSeconds"),
        /** Seconds. */
        REVERSAL("reversalSeconds"),
        /** A name of {@link Theme}. */
        THEME("theme"),
        /** A length. */
        LINE_WIDTH("lineWidth"),
        /** A length. */
        BED("bed");

        private final String word;

        Key(String word) {
            this.word = word;
        }

        /** The word it is kept under. */
        public String word() {
            return word;
        }
    }

    /** What holds where nothing has been chosen: the unit of the country, decimals, the system's colours. */
    public static ShopDefaults of(Locale locale) {
        return new ShopDefaults(NewStack.unit(locale), false, StageCosts.USUAL, Theme.SYSTEM, USUAL_LINE, USUAL_BED);
    }

    /**
     * Reads what is kept. What is missing, or cannot be read since someone changed it by hand, is as {@link #of} says.
     *
     * @param kept gives the text kept under a word, or {@code null}
     */
    public static ShopDefaults read(UnaryOperator<String> kept, Locale locale) {
        Map<Key, String> texts = new TreeMap<>(of(locale).texts());
        for (Key key : Key.values()) {
            String text = kept.apply(key.word());
            if (text != null && complaint(key, text).isEmpty()) {
                texts.put(key, text);
            }
        }
        return of(texts);
    }

    /** A new positioner, as {@link NewStack} makes it, with these choices in it. */
    public Positioner newPositioner() {
        Positioner positioner = NewStack.positioner(unit);
        positioner.setLineWidth(lineWidth);
        positioner.getAxes().forEach(axis -> axis.getStages().forEach(costs::giveTo));
        return positioner;
    }

    /** How long a row the printer can print in one piece, in femtometres. */
    public long bedLength() {
        return MM.parse(bed);
    }

    /** The texts to keep. */
    public Map<Key, String> texts() {
        return new TreeMap<>(Map.of(Key.UNIT, unit.name(), Key.FRACTIONS, String.valueOf(fractions),
                Key.RELEASE, seconds(costs.release()), Key.PER_TOOTH, seconds(costs.perTooth()),
                Key.REVERSAL, seconds(costs.reversal()), Key.THEME, theme.name(), Key.LINE_WIDTH, lineWidth, Key.BED, bed));
    }

    /** Made of texts, one for each key, of which none has a {@link #complaint}. */
    public static ShopDefaults of(Map<Key, String> texts) {
        return new ShopDefaults(DisplayUnit.valueOf(texts.get(Key.UNIT)), Boolean.parseBoolean(texts.get(Key.FRACTIONS)),
                new StageCosts(Double.parseDouble(texts.get(Key.RELEASE)), Double.parseDouble(texts.get(Key.PER_TOOTH)),
                        Double.parseDouble(texts.get(Key.REVERSAL))),
                Theme.valueOf(texts.get(Key.THEME)), withUnit(texts.get(Key.LINE_WIDTH)),
                withUnit(texts.get(Key.BED)));
    }

    /** Why a text cannot be kept, in one sentence; empty if it can. */
    public static Optional<String> complaint(Key key, String text) {
        return switch (key) {
            case UNIT -> named(EnumSet.allOf(DisplayUnit.class), text);
            case THEME -> named(EnumSet.allOf(Theme.class), text);
            case FRACTIONS -> Set.of("true", "false").contains(text) ? Optional.empty() : Optional.of("Say true or false.");
            case RELEASE, PER_TOOTH, REVERSAL -> badSeconds(text);
            case LINE_WIDTH -> badWidth(text);
            case BED -> badBed(text);
        };
    }

    private static Optional<String> named(Set<? extends Enum<?>> known, String text) {
        return known.stream().anyMatch(value -> value.name().equals(text)) ? Optional.empty()
                : Optional.of("“" + text + "” is none of " + known + ".");
    }

    private static Optional<String> badSeconds(String text) {
        try {
            double seconds = Double.parseDouble(text.strip());
            return seconds >= 0 && seconds <= LONGEST_SECONDS ? Optional.empty()
                    : Optional.of("A cost of " + text.strip() + " s is not allowed; it must be from 0 to 3600 seconds.");
        } catch (NumberFormatException e) {
            return Optional.of("“" + text.strip() + "” is not a number of seconds; write it like 4 or 0.5"
                    + (text.indexOf(',') >= 0 ? ", with a point and not a comma." : "."));
        }
    }

    private static Optional<String> badWidth(String text) {
        StackWish probe = new StackWish(AxisKind.LINEAR, DisplayUnit.MM, "1", "0.1", "", text);
        return Optional.ofNullable(new WishReading(probe).complaints().get(StackWish.Field.LINE_WIDTH));
    }

    private static Optional<String> badBed(String text) {
        try {
            long length = MM.parse(text);
            return length >= SHORTEST_BED && length <= LONGEST_BED ? Optional.empty() : Optional.of("A printer's bed of "
                    + text.strip() + " is not used here; give from 50 mm to 2000 mm.");
        } catch (QuantityException e) {
            return Optional.of(e.getMessage());
        }
    }

    private static String withUnit(String typed) {
        String text = typed.strip();
        return Character.isDigit(text.charAt(text.length() - 1)) ? text + " mm" : text;
    }

    private static String seconds(double seconds) {
        return seconds == Math.rint(seconds) ? String.valueOf((long) seconds) : String.valueOf(seconds);
    }
}
