// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A temperature as typed: {@code 28}, {@code 28.5C} or {@code 82F}. */
final class TypedTemperature {
    private static final Pattern TEMPERATURE = Pattern.compile("([+-]?[0-9]{1,4}(?:\\.[0-9]{1,6})?) ?°?([CcFf]?)");
    /** Beyond what any shop or oven of printed parts has, an expansion coefficient says nothing. */
    private static final double LOWEST_C = -50;
    private static final double HIGHEST_C = 150;

    private TypedTemperature() {
    }

    /**
     * The temperature in °C.
     *
     * @throws BadInputException if it cannot be read, or no stage has it
     */
    static double celsius(String text) throws BadInputException {
        return celsius("--temperature", text);
    }

    /** The same, typed for another option. */
    static double celsius(String option, String text) throws BadInputException {
        Matcher m = TEMPERATURE.matcher(text.strip().replace('−', '-'));
        if (!m.matches()) {
            throw new BadInputException(option + ": “" + text + "” is not a temperature; write it like 28,"
                    + " 28.5C or 82F.");
        }
        double number = Double.parseDouble(m.group(1));
        double celsius = m.group(2).equalsIgnoreCase("F") ? (number - 32) / 1.8 : number;
        if (celsius < LOWEST_C || celsius > HIGHEST_C) {
            throw new BadInputException(option + ": “" + text + "” is not the temperature of a shop; it must be"
                    + " from −50 to 150 °C.");
        }
        return celsius;
    }
}
