// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines that fit a width. */
public final class TextLines {
    private static final String MORE = "…";

    private TextLines() {
    }

    /**
     * Lines that fit, broken between words; within a word only where it alone is wider than a line.
     *
     * @param text any text; empty gives one empty line
     */
    public static List<String> wrapped(String text, double heightMm, double widthMm, TextMeasure measure) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : measure.printable(text).split(" +")) {
            String longer = line.isEmpty() ? word : line + ' ' + word;
            if (measure.widthMm(longer, heightMm) <= widthMm) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            String rest = word;
            while (measure.widthMm(rest, heightMm) > widthMm) {
                int fitting = fitting(rest, heightMm, widthMm, measure);
                lines.add(rest.substring(0, fitting));
                rest = rest.substring(fitting);
            }
            line = rest;
        }
        lines.add(line);
        return lines;
    }

    /** The text, or as much of it as fits with three dots to say so. */
    public static String cut(String text, double heightMm, double widthMm, TextMeasure measure) {
        String whole = measure.printable(text);
        if (measure.widthMm(whole, heightMm) <= widthMm) {
            return whole;
        }
        double left = widthMm - measure.widthMm(MORE, heightMm);
        return whole.substring(0, fitting(whole, heightMm, left, measure)).strip() + MORE;
    }

    /** How many characters fit, at least one, and no half of a pair. */
    private static int fitting(String word, double heightMm, double widthMm, TextMeasure measure) {
        int fitting = word.offsetByCodePoints(0, 1);
        while (fitting < word.length()) {
            int next = word.offsetByCodePoints(fitting, 1);
            if (measure.widthMm(word.substring(0, next), heightMm) > widthMm) {
                return fitting;
            }
            fitting = next;
        }
        return fitting;
    }
}
