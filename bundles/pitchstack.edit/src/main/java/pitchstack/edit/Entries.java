// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntFunction;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;
import pitchstack.edit.Property.Entry;

/** Makes the properties of one element, each kind of value in one place. */
final class Entries {
    private static final int LONGEST_TEXT = 2000;

    /** Makes the edit that sets a value. */
    interface Change {
        /**
         * @param feature what is set
         * @param value the new value, or {@code null} to clear it
         * @param label what the person did
         */
        Edit to(EAttribute feature, Object value, String label);
    }

    private final EObject element;
    private final String named;
    private final Change change;

    /**
     * @param element the element whose values are set
     * @param named what the element is called in the undo menu
     */
    Entries(EObject element, String named) {
        this(element, named, (feature, value, label) -> new SetValue(element, feature, value, label));
    }

    /**
     * @param element the element whose values are shown
     * @param named what the element is called in the undo menu
     * @param change sets them
     */
    Entries(EObject element, String named, Change change) {
        this.element = element;
        this.named = named;
        this.change = change;
    }

    /** A fact that follows from others. */
    static Property derived(String id, String label, String tooltip, String group, String text) {
        return new Property(id, label, tooltip, group, text, List.of(), Optional.empty());
    }

    /** Free text. */
    Property text(EAttribute feature, String label, String tooltip, String group) {
        return typed(feature, label, tooltip, group, current(feature), typed -> typed.length() > LONGEST_TEXT
                ? new Entry.Refused("The " + label + " has " + typed.length() + " characters; " + LONGEST_TEXT + " are allowed.")
                : set(feature, label, typed.isBlank() ? null : typed.strip()));
    }

    /**
     * A quantity or a pitch, kept as typed.
     *
     * @param optional whether it may be left empty
     * @param read reads the text and throws a {@link QuantityException} with a sentence where it cannot be taken
     */
    Property quantity(EAttribute feature, String label, String tooltip, String group, boolean optional,
            Consumer<String> read) {
        return typed(feature, label, tooltip, group, current(feature), typed -> {
            if (typed.isBlank()) {
                return optional ? set(feature, label, null) : new Entry.Refused("The " + label + " cannot be left empty.");
            }
            try {
                read.accept(typed);
                return set(feature, label, typed.strip());
            } catch (QuantityException e) {
                return new Entry.Refused(e.getMessage());
            }
        });
    }

    /**
     * A length or an angle that may be left empty, and else is above a bound.
     *
     * @param scale reads it
     * @param bound in counts: 0, or −1 for “not negative”
     */
    Property size(EAttribute feature, String label, String tooltip, String group, Scale scale, long bound) {
        return kept(feature, label, tooltip, group, scale, Properties.above(scale, "The " + label, bound));
    }

    /** A position that may be left empty. */
    Property position(EAttribute feature, String label, String tooltip, String group, Scale scale) {
        return kept(feature, label, tooltip, group, scale, scale::parse);
    }

    /** Kept with its unit, so that it means the same when the unit of the file is changed. */
    private Property kept(EAttribute feature, String label, String tooltip, String group, Scale scale,
            Consumer<String> read) {
        return typed(feature, label, tooltip, group, current(feature), typed -> {
            if (typed.isBlank()) {
                return set(feature, label, null);
            }
            try {
                read.accept(typed);
                return set(feature, label, TypedText.withUnit(typed, scale));
            } catch (QuantityException e) {
                return new Entry.Refused(e.getMessage());
            }
        });
    }

    /** A whole number from least to most. */
    Property integer(EAttribute feature, String label, String tooltip, String group, int least, int most) {
        return integer(feature, label, tooltip, group, least, most, value -> change(feature, label, value));
    }

    /** A whole number from least to most, and the edit that sets it. */
    Property integer(EAttribute feature, String label, String tooltip, String group, int least, int most,
            IntFunction<Edit> edit) {
        return typed(feature, label, tooltip, group,
                TrueMinus.in(String.valueOf(element.eGet(feature))), typed -> {
            try {
                int value = Integer.parseInt(hyphened(typed));
                return value >= least && value <= most ? new Entry.Accepted(edit.apply(value))
                        : outside(label, typed, least, most);
            } catch (NumberFormatException notWhole) {
                return outside(label, typed, least, most);
            }
        });
    }

    private static Entry outside(String label, String typed, int least, int most) {
        return new Entry.Refused("“" + typed.strip() + "” is not allowed for " + label + "; give a whole number from "
                + TrueMinus.in(least + " to " + most) + ".");
    }

    /** A number with a true minus as Java reads it. */
    private static String hyphened(String typed) {
        return typed.strip().replace('−', '-');
    }

    /** A decimal number from least to most. */
    Property decimal(EAttribute feature, String label, String tooltip, String group, double least, double most) {
        return typed(feature, label, tooltip, group, TrueMinus.in(plain((Double) element.eGet(feature))), typed -> {
            try {
                double value = Double.parseDouble(hyphened(typed));
                if (value >= least && value <= most) {
                    return set(feature, label, value);
                }
            } catch (NumberFormatException notDecimal) {
                // falls through to the sentence that serves both mistakes
            }
            return new Entry.Refused("“" + typed.strip() + "” is not allowed for " + label + "; give a number from "
                    + TrueMinus.in(plain(least) + " to " + plain(most)) + ".");
        });
    }

    /** One of a few words. */
    Property choice(EAttribute feature, String label, String tooltip, String group, List<? extends Enumerator> allowed) {
        List<String> words = allowed.stream().map(Enumerator::getLiteral).toList();
        Function<String, Entry> entry = typed -> {
            int at = words.indexOf(typed.strip());
            return at >= 0 ? set(feature, label, allowed.get(at)) : new Entry.Refused("“" + typed.strip()
                    + "” is not allowed for " + label + "; choose " + String.join(" or ", words) + ".");
        };
        return new Property(feature.getName(), label, tooltip, group, ((Enumerator) element.eGet(feature)).getLiteral(),
                words, Optional.of(entry));
    }

    private Property typed(EAttribute feature, String label, String tooltip, String group, String text,
            Function<String, Entry> entry) {
        return new Property(feature.getName(), label, tooltip, group, text, List.of(), Optional.of(entry));
    }

    private Entry set(EAttribute feature, String label, Object value) {
        return new Entry.Accepted(change(feature, label, value));
    }

    private Edit change(EAttribute feature, String label, Object value) {
        return change.to(feature, value, "Change " + label + " of " + named);
    }

    private String current(EAttribute feature) {
        Object value = element.eGet(feature);
        return value == null ? "" : value.toString();
    }

    /** A number without a needless point: {@code 4} and {@code 0.5}. */
    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9 ? Long.toString((long) value) : Double.toString(value);
    }
}
