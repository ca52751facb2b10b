// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import pitchstack.core.units.QuantityException;

/** What was assumed and what could not be read, gathered while reading; each sentence once. */
final class Notes {
    private final Set<String> assumptions = new LinkedHashSet<>();
    private final Set<String> unreadable = new LinkedHashSet<>();

    void assume(String sentence) {
        assumptions.add(sentence);
    }

    void refuse(String sentence) {
        unreadable.add(sentence);
    }

    /**
     * A typed quantity of at least 0; nothing where it is blank, or cannot be read, which is noted.
     *
     * @param what it is, for the sentence
     */
    OptionalDouble quantity(String what, String text, ToDoubleFunction<String> read) {
        if (text == null || text.isBlank()) {
            return OptionalDouble.empty();
        }
        try {
            double value = read.applyAsDouble(text);
            if (value < 0) {
                refuse(what + " is " + text.strip() + "; it must not be below 0.");
                return OptionalDouble.empty();
            }
            return OptionalDouble.of(value);
        } catch (QuantityException e) {
            refuse(what + " cannot be read: " + e.getMessage());
            return OptionalDouble.empty();
        }
    }

    /** A number of at least 0, where 0 means that the file does not say. */
    OptionalDouble number(String what, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            refuse(what + " is " + value + "; it must be a number of at least 0.");
            return OptionalDouble.empty();
        }
        return value == 0 ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    List<String> assumptions() {
        return List.copyOf(assumptions);
    }

    List<String> unreadable() {
        return List.copyOf(unreadable);
    }
}
